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

    private readonly Dictionary<StorageEngine, TestLaboratory> _made = [];

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

    // Cheap hashes: what a password costs is tested with the accounts.
    public static DemoLaboratory Maker(TestLaboratory laboratory, TimeProvider? clock = null) => new(
        new StorageOptions(laboratory.Engine, laboratory.Connection, null, "."), clock ?? laboratory.Clock,
        new PasswordHasher<Person>(Options.Create(new PasswordHasherOptions { IterationCount = 1000 })));

    public async ValueTask DisposeAsync()
    {
        foreach (var laboratory in _made.Values)
            await laboratory.DisposeAsync();
    }
}
