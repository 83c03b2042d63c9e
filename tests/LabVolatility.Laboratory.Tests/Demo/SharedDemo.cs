using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Laboratory.Tests.Storage;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Demo;

/// <summary>The demo on each engine, made once for the tests that only look at it.</summary>
[CollectionDefinition(Name)]
public sealed class SharedDemo : IAsyncDisposable, ICollectionFixture<SharedDemo>
{
    public const string Name = "demo laboratory";

    /// <summary>Days that hold each case once.</summary>
    public const int OneRound = 100;

    private readonly Dictionary<StorageEngine, TestLaboratory> _made = [];
    private TestLaboratory? _whole;

    /// <summary>What was told while each was made.</summary>
    public Dictionary<StorageEngine, List<(int Done, int Of)>> Told { get; } = [];

    public async Task<TestLaboratory> On(StorageEngine engine)
    {
        if (_made.TryGetValue(engine, out var made))
            return made;
        var laboratory = _made[engine] = await TestLaboratory.Create(engine);
        var told = Told[engine] = [];
        await Maker(laboratory).MakeAsync(new Listener(told.Add), TestContext.Current.CancellationToken);
        return laboratory;
    }

    /// <summary>The demo as people get it.</summary>
    public async Task<TestLaboratory> Whole()
    {
        if (_whole is not null)
            return _whole;
        _whole = await TestLaboratory.Create(StorageEngine.Sqlite);
        await Maker(_whole, days: DemoDays.Whole).MakeAsync(cancel: TestContext.Current.CancellationToken);
        return _whole;
    }

    // Cheap hashes: what a password costs is tested with the accounts.
    public static DemoLaboratory Maker(TestLaboratory laboratory, TimeProvider? clock = null, int days = OneRound) => new(
        new StorageOptions(laboratory.Engine, laboratory.Connection, null, "."), clock ?? laboratory.Clock,
        new PasswordHasher<Person>(Options.Create(new PasswordHasherOptions { IterationCount = 1000 }))) { Days = days };

    public async ValueTask DisposeAsync()
    {
        foreach (var laboratory in _made.Values)
            await laboratory.DisposeAsync();
        if (_whole is not null)
            await _whole.DisposeAsync();
    }
}
