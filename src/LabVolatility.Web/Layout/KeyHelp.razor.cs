using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>The keys of this page and those that work everywhere; Ctrl+/ shows them.</summary>
public sealed partial class KeyHelp : ComponentBase
{
    private static readonly IReadOnlyList<KeyHint> Everywhere =
    [
        new("Tab", "next field"),
        new("Shift+Tab", "field before"),
        new("Escape", "close what is open, nothing is signed"),
        new("Ctrl+/", "show the keys"),
        new("Ctrl+P", "print the page, without navigation"),
    ];

    [Parameter]
    public IReadOnlyList<KeyHint> Page { get; set; } = [];
}
