using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>One batch: what may happen to it, and the proof.</summary>
public sealed partial class BatchPage : DecisionPage
{
    private BatchChoices _choices = new([], [], []);
    private BatchEntry? _entry;
    private Guid _version;
    private string? _shown;

    [Inject]
    private ReadBatchChoices ReadChoices { get; set; } = null!;

    [Inject]
    private RegisterBatch Register { get; set; } = null!;

    [Inject]
    private TakeStep Steps { get; set; } = null!;

    [Inject]
    private EnterPartyResult EnterParty { get; set; } = null!;

    [Inject]
    private WithdrawPartyResult WithdrawParty { get; set; } = null!;

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        if (_shown != Number)
            (_shown, _entry, Said, Problems) = (Number, null, null, []);
        await base.LoadAsync(cancellationToken);
    }

    private static string Lead(BatchSheet sheet) => string.Join(" · ", new[]
    {
        sheet.Evidence.GradeName,
        sheet.Batch.TankCode is { } tank ? $"tank {tank}" : null,
        sheet.Batch.CubicMetres is { } volume ? $"{Rounding.Plain(volume)} m³" : null,
        BatchWords.Of(sheet.Batch.State),
    }.OfType<string>());

    private async Task BeginChangeAsync()
    {
        _choices = await ReadChoices.Run(Leaving);
        (_entry, _version, Problems, Said) = (BatchEntry.Of(Sheet!.Batch, Clock), Sheet.Batch.Version, [], null);
    }

    private async Task ChangeAsync()
    {
        if (Busy || _entry is null)
            return;
        var (request, unread) = _entry.Read(Clock);
        if (unread.Count > 0)
            Problems = unread;
        else if (await SaveAsync(_version, request with { Number = null, Grade = null }))
            _entry = null;
    }

    private Task EnterEthanolAsync(BatchEntry entry)
    {
        var (request, unread) = entry.Read(Clock);
        Problems = unread;
        return unread.Count > 0 ? Task.CompletedTask : SaveAsync(Sheet!.Batch.Version, request with { Number = null, Grade = null });
    }

    private Task TakeStepAsync(TakeStepRequest request) =>
        DoAsync(async actor => await Steps.Run(actor, request, Leaving), "The step is taken.");

    private Task HoldByTreeAsync(RetestAdvice advice) => DecideAsync(DecisionKind.Hold, advice.Found);

    private Task EnterPartyAsync(PartyResultRequest request) =>
        DoAsync(async actor => await EnterParty.Run(actor, request, Leaving), "Their result is entered; how it stands beside ours is below.");

    private Task WithdrawPartyAsync((Guid Result, string? Reason) asked) =>
        DoAsync(async actor => await WithdrawParty.Run(actor, asked.Result, asked.Reason, Leaving), "Their result is withdrawn; it stays readable.");

    private async Task DoAsync(Func<Actor, Task<Answer<Guid>>> act, string done)
    {
        if (Busy)
            return;
        Busy = true;
        var answer = await act(await ActorNowAsync());
        (Problems, Said) = (answer.Problems, answer.Ok ? done : null);
        await ReloadAsync();
        Busy = false;
    }

    private async Task<bool> SaveAsync(Guid version, BatchRequest request)
    {
        Busy = true;
        var answer = await Register.Change(await ActorNowAsync(), Number, version, request, Leaving);
        (Problems, Said) = (answer.Problems, answer.Ok ? "The change is saved. Limits and outcome below follow it." : null);
        await ReloadAsync();
        Busy = false;
        if (answer.Kind == AnswerKind.Conflict && _entry is not null)
        {
            // What the other person saved has been told: saving once more is deliberate.
            _version = Sheet!.Batch.Version;
            Problems = [.. Problems, new Problem("", "Save again to put what you typed in its place.")];
        }

        return answer.Ok;
    }
}
