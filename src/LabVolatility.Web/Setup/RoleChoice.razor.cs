using LabVolatility.Laboratory.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Setup;

/// <summary>The roles of a person, to tick.</summary>
public sealed partial class RoleChoice : ComponentBase
{
    [Parameter, EditorRequired]
    public Roles Roles { get; set; }

    [Parameter]
    public EventCallback<Roles> RolesChanged { get; set; }

    private Task ToggleAsync(Roles role, bool held) => RolesChanged.InvokeAsync(held ? Roles | role : Roles & ~role);
}
