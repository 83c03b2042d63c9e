using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>A page on which a batch is decided: what was seen is what is signed, whoever was first is told.</summary>
public abstract class DecisionPage : LabPage
{
    [Parameter]
    public string Number { get; set; } = "";

    public override string Title => $"Batch {Number}";

    protected BatchSheet? Sheet { get; private set; }

    protected IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>What was done last, in words.</summary>
    protected string? Said { get; set; }

    protected bool Busy { get; set; }

    protected SignDialog Dialog { get; set; } = null!;

    /// <summary>What the signer saw when the dialog opened; null while none is open.</summary>
    private DecisionRequest? _toSign;

    [Inject]
    private ReadBatch Read { get; set; } = null!;

    [Inject]
    private Decide Decide { get; set; } = null!;

    [Inject]
    private IssueCertificate Issue { get; set; } = null!;

    [Inject]
    private PasswordSignature Signed { get; set; } = null!;

    protected override bool Concerns(Notice notice) => Sheet is { } sheet
        && (notice.IsAbout<Batch>(sheet.Batch.Id) || notice.ChangesRules()
            || (notice.ChangesReadiness() && sheet.Evidence.Samples.SelectMany(s => s.Determinations).Any(d => notice.IsAbout<Instrument>(d.Instrument)))
            || (notice.Changes<TankMovement>() && notice.IsAbout<Tank>(sheet.Batch.TankCode)));

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        Sheet = await Read.Run(Number, cancellationToken);
        Missing = Sheet is null ? $"There is no batch {Number}." : null;
        if (_toSign is { } signing && Sheet is { } now && (signing.EvidenceHash != now.Assessed.EvidenceHash || signing.ExpectedSequence != Sequence(now)))
            Dialog.Outdate($"{News} What this dialog shows is no longer all there is: nothing can be signed from it. Close this and look at the batch as it is now.".TrimStart());
    }

    protected Task DecideAsync(DecisionKind kind) => DecideAsync(kind, null);

    /// <summary>Asks for a signature, with a reason to begin with.</summary>
    protected async Task DecideAsync(DecisionKind kind, string? reason)
    {
        if (Busy || Sheet is not { } sheet)
            return;
        Busy = true;
        Problems = [];
        Said = null;
        // What the signer saw when the dialog opened: a change meanwhile is told, never signed over.
        var request = _toSign = new DecisionRequest(
            Guid.NewGuid(), Number, kind, Sequence(sheet), sheet.Assessed.EvidenceHash, null, "");
        var handover = new HandoverEntry();
        var asked = SignWords.Request(kind, sheet) with { Reason = reason, Fields = kind == DecisionKind.Hold ? HandoverFields.Of(handover, "/hold") : null };
        var done = await Dialog.AskAsync(asked, signature => SignAsync(request, handover, signature));
        _toSign = null;
        if (done && kind is DecisionKind.Release or DecisionKind.Concession)
            await IssueNowAsync();
        await ReloadAsync();
        Busy = false;
    }

    protected async Task IssueAsync()
    {
        if (Busy)
            return;
        Busy = true;
        Said = null;
        await IssueNowAsync();
        await ReloadAsync();
        Busy = false;
    }

    private static int Sequence(BatchSheet sheet) => sheet.Assessed.InForce?.Sequence ?? 0;

    private async Task<string?> SignAsync(DecisionRequest request, HandoverEntry handover, Signature signature)
    {
        var note = handover.Read(Clock);
        if (handover.Problems.Count > 0)
            return string.Join(" ", handover.Problems.Select(p => p.Message));
        var answer = await Decide.Run(
            signature.Actor, request with { Reason = signature.Reason, Password = signature.Password, Handover = note }, Leaving);
        if (answer.Kind == AnswerKind.Conflict)
            await ReloadAsync();
        if (answer.Ok)
            Said = $"Batch {Number}: {SignWords.Done(request.Kind)}.";
        return answer.Ok ? null
            : answer.Problems.Any(p => p.Rule == ISignature.Rule) ? Signed.Problem ?? answer.Text
            : answer.Kind == AnswerKind.Conflict ? $"{answer.Text} Nothing was signed. Cancel and look at the batch as it is now."
            : answer.Text;
    }

    private async Task IssueNowAsync()
    {
        var answer = await Issue.Run(await ActorNowAsync(), Number, Leaving);
        Problems = answer.Problems;
        if (answer.Value is { } issued)
            Said = $"{Said} Certificate {issued.Number}, revision {issued.Revision} is issued.".Trim();
    }
}
