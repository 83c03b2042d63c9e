using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

public sealed class DatabaseCopyTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lab-copy-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_PutBack_HoldsTheSameRecords(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        await FullScene.Create(laboratory);
        var before = await new CheckRecords(laboratory.Open).Run(TestContext.Current.CancellationToken);
        var file = Path.Combine(_folder, "copy");
        var empty = await TestDatabases.NewEmptyAsync(engine);

        await DatabaseCopy.WriteAsync(new StorageOptions(engine, laboratory.Connection, null, _folder), file);
        await DatabaseCopy.ReadAsync(file, new StorageOptions(engine, empty, null, _folder));

        var restored = LabStorage.Opener(engine, empty, laboratory.Clock);
        var after = await new CheckRecords(restored).Run(TestContext.Current.CancellationToken);
        Assert.True(after.Intact, string.Join(" ", after.Findings));
        Assert.Equal((before.Records, before.Head), (after.Records, after.Head));
        await using (var lab = restored())
        {
            await LabStorage.CheckGuardsAsync(lab, TestContext.Current.CancellationToken);
            Assert.Equal(2, await lab.Certificates.CountAsync(TestContext.Current.CancellationToken));
        }

        await TestDatabases.DropAsync(engine, empty);
    }

    [Theory, MemberData(nameof(Engines.All), MemberType = typeof(Engines))]
    public async Task Copy_OverRecordsOrAFile_IsRefused(StorageEngine engine)
    {
        await using var laboratory = await TestLaboratory.Create(engine);
        var options = new StorageOptions(engine, laboratory.Connection, null, _folder);
        var file = Path.Combine(_folder, "copy");
        await DatabaseCopy.WriteAsync(options, file);

        var again = await Assert.ThrowsAsync<InvalidOperationException>(() => DatabaseCopy.WriteAsync(options, file));
        var over = await Assert.ThrowsAsync<InvalidOperationException>(() => DatabaseCopy.ReadAsync(file, options));

        Assert.Contains("already", again.Message, StringComparison.Ordinal);
        Assert.Contains("never written over", over.Message, StringComparison.Ordinal);
    }
}
