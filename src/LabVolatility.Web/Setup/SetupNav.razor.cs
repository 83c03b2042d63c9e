using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The pages of Setup: those of the administrator for an administrator, reference data for everybody.</summary>
public sealed partial class SetupNav : ComponentBase
{
    /// <summary>Who looks; left out on the administrator's own pages.</summary>
    [Parameter]
    public Actor? For { get; set; }

    private bool Administers => For is null || For.May(Right.Administer);
}
