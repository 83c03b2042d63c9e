using LabVolatility.Laboratory.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

public sealed class StorageOptionsTests
{
    [Fact]
    public void From_NothingSet_SqliteInTheDataFolder()
    {
        var options = StorageOptions.From(_ => null);

        Assert.Equal(StorageEngine.Sqlite, options.Engine);
        Assert.Equal("./data", options.DataFolder);
        Assert.Equal("Data Source=./data/labvolatility.db", options.Connection);
    }

    [Fact]
    public void From_Postgres_TakesBothConnections()
    {
        var options = StorageOptions.From(Settings(
            ("LABVOLATILITY_DATABASE", "Postgres"), ("LABVOLATILITY_CONNECTION", "Host=a"), ("LABVOLATILITY_MIGRATION_CONNECTION", "Host=b")));

        Assert.Equal(new StorageOptions(StorageEngine.Postgres, "Host=a", "Host=b", "./data"), options);
    }

    [Theory]
    [InlineData("postgres", "LABVOLATILITY_CONNECTION is due")]
    [InlineData("files", "is sqlite or postgres, not files")]
    public void From_WrongSetting_NamesIt(string database, string expected)
    {
        var refusal = Assert.Throws<InvalidOperationException>(() => StorageOptions.From(Settings(("LABVOLATILITY_DATABASE", database))));

        Assert.Contains(expected, refusal.Message, StringComparison.Ordinal);
    }

    private static Func<string, string?> Settings(params (string Name, string Value)[] given) =>
        name => Array.Find(given, s => s.Name == name).Value;
}
