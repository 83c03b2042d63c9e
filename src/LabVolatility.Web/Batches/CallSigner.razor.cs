using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Shown to who works on a batch and may not sign it: whom to call, and the address to send.</summary>
public sealed partial class CallSigner : ComponentBase
{
    private IReadOnlyList<Signer>? _signers;
    private BatchSheet? _read;

    [Parameter, EditorRequired]
    public BatchSheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired]
    public Actor Actor { get; set; } = null!;

    [Inject]
    private ReadSigners Read { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;

    private string Address => Addresses.ToAbsoluteUri(BatchAddress.AtNight(Sheet.Batch.Number)).AbsoluteUri;

    // Somebody at work there who can't sign: without the right, or with a hand in a result.
    private bool IsNeeded => OfferedDecisions.IsOpen(Sheet) && Sheet.Evidence.Samples.Count > 0 && Actor.May(Right.Determine)
        && (!Actor.May(Right.Decide) || EvidenceRules.Hands(Sheet.Evidence).Contains(Actor.Id));

    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_read, Sheet))
            return;
        _read = Sheet;
        _signers = IsNeeded ? await Read.Run(Sheet.Evidence) : null;
    }

    private static string Dialled(string phone) => string.Concat(phone.TakeWhile(c => c is not (',' or ';')).Where(c => char.IsAsciiDigit(c) || c == '+'));
}
