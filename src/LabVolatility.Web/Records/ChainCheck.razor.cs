using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Records;

/// <summary>Runs the check of the records for those who may, and shows the head to keep elsewhere.</summary>
public sealed partial class ChainCheck : ComponentBase, IDisposable
{
    private bool _may;
    private RecordsReport? _report;
    private DateTimeOffset? _checkedAt;
    private CancellationTokenSource? _running;

    [Inject]
    private CurrentActor People { get; set; } = null!;

    [Inject]
    private CheckRecords Check { get; set; } = null!;

    [Inject]
    private LabClock Clock { get; set; } = null!;

    public void Dispose() => _running?.Cancel();

    protected override async Task OnInitializedAsync() => _may = (await People.GetAsync()).May(Right.CheckRecords);

    private async Task RunAsync()
    {
        if (_running is not null || !(await People.GetAsync()).May(Right.CheckRecords))
            return;
        using var running = _running = new CancellationTokenSource();
        try
        {
            _report = await Task.Run(() => Check.Run(running.Token), running.Token);
            _checkedAt = Clock.Now;
        }
        catch (OperationCanceledException)
        {
            _report = null;
        }
        finally
        {
            _running = null;
        }
    }
}
