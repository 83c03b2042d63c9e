using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>A cargo certificate before it is signed: a new one, one that begins with a batch, or the next revision of one.</summary>
public sealed partial class NewCargoPage : LabPage
{
    private CargoEntry _entry = new();
    private ReadCargoBatches.Choices _choices = new([], []);
    private IReadOnlyList<Problem> _problems = [];
    private SignDialog _dialog = null!;
    private IssuedCertificate? _issued;
    private bool _busy;

    public override string Title => _entry.Replaces is { } earlier ? $"Cargo certificate {earlier}, revision {_entry.ReplacesRevision + 1}" : "New cargo certificate";

    public override Right Needs => Right.Decide;

    [SupplyParameterFromQuery(Name = "batch")]
    private string? Batch { get; set; }

    [SupplyParameterFromQuery(Name = "replaces")]
    private string? Replaces { get; set; }

    [Inject]
    private ReadCargoBatches Read { get; set; } = null!;

    [Inject]
    private ReadCargoes Cargoes { get; set; } = null!;

    [Inject]
    private IssueCargoCertificate Issue { get; set; } = null!;

    [Inject]
    private PasswordSignature Signed { get; set; } = null!;

    protected override bool KeepsTyping => true;

    protected override bool Concerns(Notice notice) => _entry.Tanks.Any(t => notice.IsAbout<Batch>(t.Seen?.Batch.Id));

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _choices = await Read.Offered(cancellationToken);
        var replaced = Replaces is null ? null : await Cargoes.One(Replaces, cancellationToken);
        if (Replaces is not null && replaced is null)
            Missing = $"There is no cargo certificate {Replaces}.";
        _entry = replaced is null ? new CargoEntry { Tanks = { new CargoTankEntry { Batch = Batch } } } : CargoEntry.Revising(replaced);
        var seen = await Read.Run([.. _entry.Tanks.Select(t => t.Batch).OfType<string>()], cancellationToken);
        foreach (var tank in _entry.Tanks)
        {
            tank.Seen = seen.FirstOrDefault(b => b.Batch.Number == tank.Batch);
            tank.Tank ??= tank.Seen?.Batch.TankCode;
        }
    }

    private async Task SignAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var request = _entry.Request();
        _problems = await Issue.Check(await ActorNowAsync(), request, Leaving);
        if (_problems.Count == 0 && await _dialog.AskAsync(Asked(request), signature => IssueAsync(request, signature)))
            Addresses.NavigateTo(CargoAddress.Of(_issued!.Number));
        _busy = false;
    }

    private SignRequest Asked(CargoRequest request) => new(
        request.Replaces is null ? "Issue the cargo certificate" : $"Issue revision {request.ReplacesRevision + 1} of {request.Replaces}",
        IssueCargoCertificate.Meaning(request),
        [
            .. _entry.Tanks.Select(t => t.Seen?.Line).OfType<Laboratory.Certificates.Documents.CargoTankLine>()
                .Select((line, at) => $"{_entry.Tanks[at].Tank}: {line.Quantity} {line.Reported}{line.Suffix} {line.Unit}, batch {line.Batch}, {line.Decision}."),
            "It gets a number that is never used again, and a code by which a recipient can check it.",
            "If a release that it rests on is withdrawn or marked for review, it no longer covers that tank, and who checks it is told so.",
        ]);

    private async Task<string?> IssueAsync(CargoRequest request, Signature signature)
    {
        var answer = await Issue.Run(signature.Actor, request with { Password = signature.Password }, Leaving);
        _issued = answer.Value;
        return answer.Ok ? null
            : answer.Problems.Any(p => p.Rule == ISignature.Rule) ? Signed.Problem ?? answer.Text
            : $"{answer.Text} Nothing was signed.";
    }
}
