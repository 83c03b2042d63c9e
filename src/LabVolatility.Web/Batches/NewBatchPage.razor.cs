using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Batches;

/// <summary>Registers a batch: number, grade, tank, where it may go and when it will be used.</summary>
public sealed partial class NewBatchPage : LabPage
{
    private readonly BatchEntry _entry = new() { Destinations = { new DestinationEntry() } };
    private BatchChoices _choices = new([], [], []);
    private IReadOnlyList<Problem> _problems = [];
    private bool _busy;

    public override string Title => "New batch";

    public override Right Needs => Right.ManageBatches;

    [Inject]
    private ReadBatchChoices Read { get; set; } = null!;

    [Inject]
    private RegisterBatch Register { get; set; } = null!;

    protected override bool Concerns(Notice notice) => notice.Changes<Tank>() || notice.Changes<Grade>() || notice.ChangesLimits();

    protected override async Task LoadAsync(CancellationToken cancellationToken) => _choices = await Read.Run(cancellationToken);

    private async Task RegisterAsync()
    {
        if (_busy)
            return;
        _busy = true;
        var (request, unread) = _entry.Read(Clock);
        if (unread.Count > 0)
        {
            _problems = unread;
        }
        else
        {
            var answer = await Register.Run(await ActorNowAsync(), request, Leaving);
            _problems = answer.Problems;
            if (answer.Value is { } number)
                Addresses.NavigateTo(BatchAddress.Of(number));
        }

        _busy = false;
    }
}
