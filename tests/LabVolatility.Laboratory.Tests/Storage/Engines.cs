using LabVolatility.Laboratory.Storage;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>The data source of every test that touches a database.</summary>
public static class Engines
{
    public static TheoryData<StorageEngine> All => [StorageEngine.Sqlite, StorageEngine.Postgres];
}
