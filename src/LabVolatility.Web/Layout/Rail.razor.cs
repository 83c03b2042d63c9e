using LabVolatility.Laboratory.People;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>The slim rail: whose laboratory, its places, the clock, the person, and the emergency page always at its end.</summary>
public sealed partial class Rail : ComponentBase
{
    private bool _open;

    [Parameter, EditorRequired]
    public AccountFacts? Account { get; set; }

    [Parameter, EditorRequired]
    public bool Dark { get; set; }

    /// <summary>Raised with "light" or "dark".</summary>
    [Parameter]
    public EventCallback<string?> ThemeChosen { get; set; }

    [Inject]
    private LaboratoryFacts Facts { get; set; } = null!;

    private Roles Held => Account?.Roles ?? Roles.None;
}
