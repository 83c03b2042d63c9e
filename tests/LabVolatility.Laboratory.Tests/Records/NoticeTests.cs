using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

public sealed class NoticeTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Change_Committed_IsHeardOnce(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var node = await ListeningNode.StartAsync(laboratory);

        await node.SaveAsync(Tank(1));
        await node.SaveAsync(Tank(2));

        var (first, second) = (await node.NextAsync(), await node.NextAsync());
        Assert.Equal("T-1", Assert.Single(first.Changed).Name);
        Assert.Equal("T-2", Assert.Single(second.Changed).Name);
        Assert.Equal((TestLaboratory.Act.Actor, TestLaboratory.Act.Name), (first.Who, first.Act));
        Assert.False(node.HasMore);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Change_RolledBackOrLeft_IsNeverHeard(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var node = await ListeningNode.StartAsync(laboratory);
        await using (var lab = node.Open())
        {
            lab.Act = TestLaboratory.Act;
            await using (var rolledBack = await lab.BeginWriteAsync(Cancel))
            {
                lab.Add(Tank(1));
                await lab.SaveChangesAsync(Cancel);
                await rolledBack.RollbackAsync(Cancel);
            }

            await using (await lab.BeginWriteAsync(Cancel))
            {
                lab.Add(Tank(2));
                await lab.SaveChangesAsync(Cancel);
            }

            // The same context goes on: what it saved in vain must not be told with what it saves now.
            lab.Add(Tank(3));
            await lab.SaveChangesAsync(Cancel);
        }

        var heard = await node.NextAsync();

        Assert.Equal("T-3", Assert.Single(heard.Changed).Name);
        Assert.False(node.HasMore);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Change_OfTwoSaves_IsOneNotice(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var node = await ListeningNode.StartAsync(laboratory);
        await using (var lab = node.Open())
        {
            lab.Act = TestLaboratory.Act;
            await using var transaction = await lab.BeginWriteAsync(Cancel);
            lab.Add(Tank(1));
            await lab.SaveChangesAsync(Cancel);
            lab.Add(Tank(2));
            await lab.SaveChangesAsync(Cancel);
            await transaction.CommitAsync(Cancel);
        }

        var heard = await node.NextAsync();

        Assert.Equal(["T-1", "T-2"], heard.Changed.Select(t => t.Name));
        Assert.False(node.HasMore);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Change_TooBigToList_ConcernsEverything(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var node = await ListeningNode.StartAsync(laboratory);

        await node.SaveAsync([.. Enumerable.Range(1, 300).Select(Tank)]);

        var heard = await node.NextAsync();
        Assert.True(heard.Much);
        Assert.True(heard.Changes<Batch>());
        Assert.True(heard.IsAbout<Sample>(Guid.NewGuid()));
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Amendment_IsAboutItsSampleAndBatch_ByNumber(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        await using var node = await ListeningNode.StartAsync(laboratory);
        await using (var lab = node.Open())
        {
            lab.Act = TestLaboratory.Act;
            lab.Entry(lab.Add(scene.NewRevision(2, scene.Analyst, "read again")).Entity).Property(nameof(DeterminationRevision.DeterminationId)).CurrentValue = scene.Determination.Id;
            await lab.SaveChangesAsync(Cancel);
        }

        var heard = await node.NextAsync();

        Assert.True(heard.Changes<DeterminationRevision>());
        Assert.False(heard.Changes<Sample>());
        Assert.True(heard.IsAbout<Sample>(scene.Sample.Id));
        Assert.True(heard.IsAbout<Batch>(scene.Batch.Id));
        Assert.False(heard.IsAbout<Batch>(Guid.NewGuid()));
        Assert.Contains(heard.BelongsTo, t => Notice.Is<Sample>(t) && t.Name == scene.Sample.Number);
        Assert.Contains(heard.BelongsTo, t => Notice.Is<Batch>(t) && t.Name == scene.Batch.Number);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Draft_Saved_IsToldNobody(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var scene = await Scene.Create(laboratory);
        await using var node = await ListeningNode.StartAsync(laboratory);

        await node.SaveAsync(new BenchDraft { Id = Guid.CreateVersion7(), TestId = scene.Sample.Tests[0].Id, PersonId = scene.Analyst.Id, Content = "{}" });
        await node.SaveAsync(Tank(1));

        Assert.Equal("T-1", Assert.Single((await node.NextAsync()).Changed).Name);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Reader_ThatFails_KeepsNobodyFromHearing(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await using var node = await ListeningNode.StartAsync(laboratory);
        using var failing = node.Subscribe(_ => throw new InvalidOperationException("a page's fault"));

        await node.SaveAsync(Tank(1));
        await node.SaveAsync(Tank(2));

        // Each is told on a thread of its own, so the order is nobody's.
        string?[] heard = [Assert.Single((await node.NextAsync()).Changed).Name, Assert.Single((await node.NextAsync()).Changed).Name];
        Assert.Equal(["T-1", "T-2"], heard.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Change_AtOneNode_IsHeardAtTheOther()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await using var first = await ListeningNode.StartAsync(laboratory);
        await using var second = await ListeningNode.StartAsync(laboratory);

        await first.SaveAsync(Tank(1));

        Assert.Equal("T-1", Assert.Single((await second.NextAsync()).Changed).Name);
        Assert.Equal("T-1", Assert.Single((await first.NextAsync()).Changed).Name);
    }

    [Fact]
    public async Task Connection_Cut_ListensAgainAndTellsThatSomethingMayBeMissed()
    {
        await using var laboratory = await TestLaboratory.Create(StorageEngine.Postgres);
        await using var node = await ListeningNode.StartAsync(laboratory);
        await laboratory.Raw($"""
            SELECT pg_terminate_backend(pid) FROM pg_stat_activity
            WHERE datname = current_database() AND application_name = '{Laboratory.Storage.Postgres.PostgresListener.Application}'
            """);
        await laboratory.Add(Tank(1)); // in the gap, by a program that tells nobody

        var missed = await node.NextAsync();
        await node.SaveAsync(Tank(2));

        Assert.True(missed.Much);
        Assert.Equal("T-2", Assert.Single((await node.NextAsync()).Changed).Name);
    }

    private static Tank Tank(int number) => new() { Code = $"T-{number}", Name = $"Tank {number}" };
}
