using System.Diagnostics;
using LabVolatility.Laboratory.People;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <summary>A page of the laboratory: it knows who acts, loads once per address, and says how long that took.</summary>
/// <remarks>
/// Inherit it, give <see cref="Title"/> and <see cref="LoadAsync"/>, and put everything into a PageShell with Page="this":
/// that shows the title at once and its content when <see cref="Ready"/>.
/// </remarks>
public abstract partial class LabPage : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource _leaving = new();
    private readonly SemaphoreSlim _reading = new(1, 1);
    private string _given = "";
    private string? _readFor;

    protected LabPage() => Leaving = _leaving.Token;

    /// <summary>The object itself: "Batch 26-1042". Shown as heading and in the browser's tab.</summary>
    public abstract string Title { get; }

    /// <summary>What a person must hold to see the page.</summary>
    public virtual Right Needs => Right.Read;

    /// <summary>Keys of this page, for the help that Ctrl+/ opens.</summary>
    public virtual IReadOnlyList<KeyHint> KeyHints => [];

    /// <summary>True once the data are there.</summary>
    public bool Ready { get; private set; }

    /// <summary>Set by <see cref="LoadAsync"/> where the address names nothing: "There is no batch 26-1042."</summary>
    public string? Missing { get; protected set; }

    /// <summary>True where the person may not see the page.</summary>
    public bool Refused { get; private set; }

    /// <summary>Who acts, with the roles held when the page was loaded; take it anew by <see cref="ActorNowAsync"/> before an act.</summary>
    public Actor Actor { get; private set; } = CurrentActor.Nobody;

    [Inject]
    public LabClock Clock { get; set; } = null!;

    [Inject]
    protected NavigationManager Addresses { get; set; } = null!;

    /// <summary>Cancelled when the person leaves the page.</summary>
    protected CancellationToken Leaving { get; }

    [Inject]
    private CurrentActor People { get; set; } = null!;

    [Inject]
    private ILoggerFactory Logs { get; set; } = null!;

    public void Dispose()
    {
        _leaving.Cancel();
        _leaving.Dispose();
        StopListening();
        Leave();
        GC.SuppressFinalize(this);
    }

    /// <summary>Reads what the page shows. Runs for each new address, and after an act by <see cref="ReloadAsync"/>.</summary>
    protected abstract Task LoadAsync(CancellationToken cancellationToken);

    /// <summary>Takes what the address says into the page's own fields. Runs for each new address, before the page is read.</summary>
    protected virtual void TakeAddress()
    {
    }

    /// <summary>Gives back what the page holds: timers, subscriptions.</summary>
    protected virtual void Leave()
    {
    }

    /// <summary>The person with the roles held at this moment; may do nothing once the session has ended.</summary>
    protected Task<Actor> ActorNowAsync() => People.GetAsync(Leaving);

    public sealed override Task SetParametersAsync(ParameterView parameters)
    {
        _given = string.Join('\n', parameters.ToDictionary().OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => $"{p.Key}={p.Value}"));
        return base.SetParametersAsync(parameters);
    }

    protected sealed override async Task OnParametersSetAsync()
    {
        // A layout drawn anew hands the same page over again: what is being typed there must not be taken away. The
        // address alone doesn't tell: it is the new one before the page has been handed the new sample.
        var asked = $"{Addresses.Uri}\n{_given}";
        if (_readFor == asked)
            return;
        _readFor = asked;
        Ready = false;
        Missing = null;
        TakeAddress();
        Listen();
        await ReloadAsync();
    }

    /// <summary>Reads the data again, without taking away what is shown meanwhile; one reading at a time, the last one is the newest.</summary>
    protected async Task ReloadAsync()
    {
        var watch = Stopwatch.StartNew();
        var count = StatementCount.Begin();
        try
        {
            await _reading.WaitAsync(Leaving);
        }
        catch (OperationCanceledException)
        {
            return;
        }

        try
        {
            TakeNews();
            Actor = await People.GetAsync(Leaving);
            Refused = !Actor.May(Needs);
            if (!Refused)
                await LoadAsync(Leaving);
        }
        catch (OperationCanceledException) when (_leaving.IsCancellationRequested)
        {
            return;
        }
        finally
        {
            _reading.Release();
        }

        Ready = true;
        Logs.CreateLogger<LabPage>().LogInformation("Page {Path} ready in {Ms} ms with {Statements} statements",
            new Uri(Addresses.Uri).AbsolutePath, watch.ElapsedMilliseconds, count.Statements);
    }
}
