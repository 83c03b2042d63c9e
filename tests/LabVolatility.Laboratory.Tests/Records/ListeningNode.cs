using System.Threading.Channels;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

/// <summary>One node of the program on a test's database, with one open page that reads every notice.</summary>
internal sealed class ListeningNode : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly Channel<Notice> _heard = Channel.CreateUnbounded<Notice>();
    private readonly CancellationTokenSource _stop = new();
    private readonly ServiceProvider _services;
    private readonly Task _listening;

    private ListeningNode(TestLaboratory laboratory)
    {
        _services = new ServiceCollection()
            .AddLabStorage(new StorageOptions(laboratory.Engine, laboratory.Connection, null, Path.GetTempPath())).BuildServiceProvider();
        _services.GetRequiredService<NoticeBoard>().Subscribe(notice => _heard.Writer.TryWrite(notice));
        _listening = LabStorage.ListenAsync(_services, _stop.Token);
    }

    public Func<LabContext> Open => _services.GetRequiredService<Func<LabContext>>();

    public Presence Presence => _services.GetRequiredService<Presence>();

    /// <summary>A node that hears.</summary>
    public static async Task<ListeningNode> StartAsync(TestLaboratory laboratory)
    {
        var node = new ListeningNode(laboratory);
        if (laboratory.Engine is StorageEngine.Postgres)
            Assert.True((await node.NextAsync()).Much);
        return node;
    }

    /// <summary>Saves things from this node, in a transaction of their own.</summary>
    public async Task SaveAsync(params object[] things)
    {
        await using var lab = Open();
        lab.Act = TestLaboratory.Act;
        lab.AddRange(things);
        await lab.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>What the page hears next.</summary>
    public Task<Notice> NextAsync() => _heard.Reader.ReadAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(Patience);

    public IDisposable Subscribe(Action<Notice> read) => _services.GetRequiredService<NoticeBoard>().Subscribe(read);

    /// <summary>True where something is heard that was not taken yet.</summary>
    public bool HasMore => _heard.Reader.TryPeek(out _);

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => _listening);
        await _services.DisposeAsync();
        _stop.Dispose();
    }
}
