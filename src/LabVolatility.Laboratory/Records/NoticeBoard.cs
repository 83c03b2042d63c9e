using System.Collections.Concurrent;
using System.Data.Common;
using System.Threading.Channels;
using LabVolatility.Laboratory.Storage;
using Microsoft.Extensions.Logging;

namespace LabVolatility.Laboratory.Records;

/// <summary>Where the open pages of this node read what was changed, by whichever node.</summary>
/// <remarks>Whoever posts waits for nobody. Readers run beside one another; one that fails is logged and hears the next notice.</remarks>
public sealed class NoticeBoard(ILogger<NoticeBoard> log)
{
    private readonly Channel<Notice> _posted = Channel.CreateUnbounded<Notice>();
    private readonly ConcurrentDictionary<Reader, byte> _readers = new();

    /// <summary>Calls back for each notice from now on, on a thread of its own, until disposed.</summary>
    public IDisposable Subscribe(Action<Notice> read)
    {
        var reader = new Reader(this, read);
        _readers[reader] = 0;
        return reader;
    }

    internal void Post(Notice notice)
    {
        if (!_readers.IsEmpty)
            _posted.Writer.TryWrite(notice);
    }

    /// <summary>Hands out what is posted, with the sample and batch that it belongs to, until cancelled.</summary>
    internal async Task RunAsync(Func<LabContext> open, CancellationToken cancellationToken)
    {
        await foreach (var posted in _posted.Reader.ReadAllAsync(cancellationToken))
        {
            var notice = await CompleteAsync(open, posted, cancellationToken);
            foreach (var reader in _readers.Keys)
                _ = Task.Run(() => Deliver(reader, notice), cancellationToken);
        }
    }

    // Once for all pages, and outside the transaction: there it would keep the next writer waiting.
    private async Task<Notice> CompleteAsync(Func<LabContext> open, Notice notice, CancellationToken cancellationToken)
    {
        try
        {
            return await NoticeReach.CompleteAsync(open, notice, cancellationToken);
        }
        catch (DbException away)
        {
            log.LogWarning("What a change belongs to can't be read now, every page is told: {Reason}", away.Message);
            return notice with { Much = true };
        }
    }

    private void Deliver(Reader reader, Notice notice)
    {
        try
        {
            reader.Read(notice);
        }
        catch (Exception fault)
        {
            log.LogError(fault, "A page could not take a notice");
        }
    }

    private sealed class Reader(NoticeBoard board, Action<Notice> read) : IDisposable
    {
        public void Read(Notice notice) => read(notice);

        public void Dispose() => board._readers.TryRemove(this, out _);
    }
}
