using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Records;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.Extensions.Time.Testing;
using Xunit;

namespace LabVolatility.Laboratory.Tests.People;

public sealed class PresenceTests
{
    private const string Place = "sample S2605-0012-X";

    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero));

    [Fact]
    public void Person_WhoTypes_IsShownSoUntilThePageIsLeft()
    {
        var presence = new Presence(_clock);
        var changes = new List<string>();
        presence.Changed += changes.Add;
        var here = Somebody("Oskar Brandt");

        presence.Put(here);
        presence.Put(here with { EnteringSince = _clock.GetUtcNow() });
        var typing = presence.At(Place);
        presence.Leave(here.Page);

        Assert.Equal(_clock.GetUtcNow(), Assert.Single(typing).EnteringSince);
        Assert.Empty(presence.At(Place));
        Assert.Equal([Place, Place, Place], changes);
    }

    [Fact]
    public async Task Node_ThatFallsSilent_TakesItsPeopleAlong()
    {
        using var stop = new CancellationTokenSource();
        var here = new Presence(_clock, (_, _) => Task.CompletedTask);
        var other = new Presence(_clock, (text, _) =>
        {
            here.Hear(text);
            return Task.CompletedTask;
        });
        var running = here.RunAsync(stop.Token);
        using (var life = new CancellationTokenSource())
        {
            var otherRunning = other.RunAsync(life.Token);
            other.Put(Somebody("Oskar Brandt"));
            await UntilAsync(() => here.At(Place).Count == 1);
            _clock.Advance(2 * Presence.Expiry);
            await UntilAsync(() => here.At(Place).Count == 1);
            await life.CancelAsync();
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => otherRunning);
        }

        _clock.Advance(Presence.Expiry + Presence.Beat + Presence.Beat);

        await UntilAsync(() => here.At(Place).Count == 0);
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => running);
    }

    [Fact]
    public async Task Person_AtOneNode_IsSeenAtTheOther()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await using var first = await ListeningNode.StartAsync(laboratory);
        await using var second = await ListeningNode.StartAsync(laboratory);
        var here = Somebody("Oskar Brandt");

        first.Presence.Put(here);
        await UntilAsync(() => second.Presence.At(Place).Count == 1);
        Assert.Equal(here, second.Presence.At(Place)[0]);
        first.Presence.Leave(here.Page);

        await UntilAsync(() => second.Presence.At(Place).Count == 0);
    }

    private PresentPerson Somebody(string name) => new(Guid.NewGuid(), Guid.NewGuid(), name, Place, _clock.GetUtcNow());

    private static async Task UntilAsync(Func<bool> seen)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromSeconds(20));
        while (!seen())
        {
            patience.Token.ThrowIfCancellationRequested();
            await Task.Yield();
        }
    }
}
