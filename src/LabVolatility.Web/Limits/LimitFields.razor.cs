using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The fields of a limit as typed.</summary>
public sealed partial class LimitFields : ComponentBase
{
    // An RVP belongs to the equation it is worked out by; a DVPE may be left to the method that answers.
    private static readonly IReadOnlyList<(string Value, string Words)> Quantities =
    [
        ("DVPE|", "DVPE, by the answering method's own correlation"),
        .. Correlations.All.Select(c => ($"{c.Quantity}|{c.Name}", LimitWords.Quantity(c.Quantity, c.Name))),
    ];

    [Parameter, EditorRequired]
    public LimitEntry Entry { get; set; } = new();

    [Parameter]
    public IReadOnlyList<string> Grades { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Whether it is the next version of a limit: its name stays.</summary>
    [Parameter]
    public bool IsVersion { get; set; }

    private void Toggle(string method, bool answers)
    {
        if (answers)
            Entry.Methods.Add(method);
        else
            Entry.Methods.Remove(method);
    }
}
