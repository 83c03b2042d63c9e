using LabVolatility.Laboratory.Batches;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>What an on-call signer must see before signing: outcome, margin beside R, who measured on what, what was found.</summary>
public sealed partial class NightGlance : ComponentBase
{
    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    private LimitEvidence? Binding => BindingLimit.Of(Sheet.Evidence);

    private IEnumerable<(SampleEvidence Sample, DeterminationEvidence Determination)> Determinations =>
        Sheet.Evidence.Samples.SelectMany(s => s.Determinations, (s, d) => (s, d)).OrderByDescending(x => x.d.MeasuredAt);

    // What stands against a release is told beside the buttons.
    private IEnumerable<string> Warnings =>
    [
        .. Sheet.Evidence.Levels.Where(l => l.Agree != true).Select(l => l.Why),
        .. Sheet.Evidence.Samples.Where(s => s.Void is not null).Select(s => $"Sample {s.Number} is {s.Void}."),
        .. Sheet.Evidence.Samples.Where(s => !s.Usable && s.Duplicates is not null).Select(s => $"Sample {s.Number}: {s.Duplicates}"),
        .. Sheet.Evidence.Remarks,
    ];
}
