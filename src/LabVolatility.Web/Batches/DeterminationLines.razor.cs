using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>One determination: a line per result, its findings and amendments below.</summary>
public sealed partial class DeterminationLines : ComponentBase
{
    [Parameter, EditorRequired]
    public string Sample { get; set; } = "";

    [Parameter, EditorRequired]
    public DeterminationEvidence Determination { get; set; } = null!;

    private IReadOnlyList<(bool Blocking, string Text)> Notes =>
    [
        .. Determination.Results.Count == 0 ? [(true, "It has no result.")] : Array.Empty<(bool, string)>(),
        .. Determination.Findings.Select(f => (f.Severity == FindingSeverity.Blocking, $"Finding: {f.Message}")),
        .. Determination.AmendedBecause is { } why ? [(false, $"Amended, now revision {Determination.Revision}: {why}")] : Array.Empty<(bool, string)>(),
    ];
}
