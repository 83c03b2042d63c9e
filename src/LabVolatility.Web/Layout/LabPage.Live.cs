using LabVolatility.Laboratory.Records;
using LabVolatility.Web.People;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Layout;

/// <content>Follows what others change while the page is open.</content>
public abstract partial class LabPage
{
    /// <summary>Between two readings for the sake of others' changes.</summary>
    public static readonly TimeSpan BetweenReadings = TimeSpan.FromMilliseconds(400);

    private readonly List<Notice> _heard = [];
    private IDisposable? _listening;
    private Pace? _pace;

    /// <summary>What somebody else changed last, in words; null where nobody did since the person's own last act.</summary>
    public string? News { get; private set; }

    [Inject]
    private NoticeBoard Board { get; set; } = null!;

    [Inject]
    private CircuitSession Session { get; set; } = null!;

    [Inject]
    private TimeProvider Time { get; set; } = null!;

    /// <summary>Whether a change shows on this page, which is then read again. Asked on the page's own thread.</summary>
    protected virtual bool Concerns(Notice notice) => false;

    /// <summary>True where reading again would throw away what a person types: such a page only says what was changed.</summary>
    protected virtual bool KeepsTyping => false;

    private void Listen()
    {
        if (_listening is not null)
            return;
        _pace = new Pace(Time, BetweenReadings, () => InvokeAsync(FollowAsync));
        _listening = Board.Subscribe(notice => _ = InvokeAsync(() => Hear(notice)));
        Session.Changed += CatchUp;
    }

    // A session that goes on shows what was changed meanwhile.
    private void CatchUp() => _pace!.Ask();

    // The person's own act reads the page by itself: only another window of theirs has to follow.
    private void Hear(Notice notice)
    {
        if (_leaving.IsCancellationRequested || Refused || !Follows(notice))
            return;
        _heard.Add(notice);
        _pace!.Ask(atOnce: notice.PersonId != Actor.Id);
    }

    // While the page is still being read it may or may not show what was changed: it is read once more.
    private bool Follows(Notice notice)
    {
        try
        {
            return !Ready || Concerns(notice);
        }
        catch (Exception fault)
        {
            Log(fault);
            return true;
        }
    }

    private async Task FollowAsync()
    {
        // Once the session has ended the page stays as it is, with all that was typed.
        if (_leaving.IsCancellationRequested || _heard.Count == 0 || Session.Ended is not null)
            return;
        try
        {
            if (KeepsTyping)
                TakeNews();
            else
                await ReloadAsync();
        }
        catch (Exception fault)
        {
            News = "Something was changed that this page could not read. Open the page again.";
            Log(fault);
        }

        if (_leaving.IsCancellationRequested)
            return;
        Session.DrawsUnasked();
        StateHasChanged();
    }

    private void TakeNews()
    {
        News = NewsWords.Of(_heard.Where(n => n.PersonId != Actor.Id), Clock, KeepsTyping);
        _heard.Clear();
    }

    private void Log(Exception fault) =>
        Logs.CreateLogger<LabPage>().LogError(fault, "Page {Path} could not follow a change", new Uri(Addresses.Uri).AbsolutePath);

    private void StopListening()
    {
        Session.Changed -= CatchUp;
        _listening?.Dispose();
        _pace?.Dispose();
    }
}
