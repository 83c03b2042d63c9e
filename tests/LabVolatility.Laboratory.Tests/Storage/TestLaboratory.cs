using System.Data.Common;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;
using Npgsql;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>A laboratory with a database of its own and a clock that stands still, for one test.</summary>
/// <example><code>await using var lab = await TestLaboratory.Create(engine);</code></example>
public sealed class TestLaboratory : IAsyncDisposable
{
    private readonly bool _isBorrowed;

    private TestLaboratory(StorageEngine engine, string connection, bool isBorrowed = false)
    {
        _isBorrowed = isBorrowed;
        Engine = engine;
        Connection = connection;
        Open = LabStorage.Opener(engine, connection, Clock);
    }

    public StorageEngine Engine { get; }

    public string Connection { get; }

    /// <summary>Monday 2026-05-04, 08:00 UTC, until a test moves it.</summary>
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 5, 4, 8, 0, 0, TimeSpan.Zero));

    public Func<LabContext> Open { get; }

    /// <summary>The act of the test itself.</summary>
    public static Act Act { get; } = new(null, "test", "command", "prepare test");

    public static async Task<TestLaboratory> Create(StorageEngine engine) => new(engine, await TestDatabases.NewAsync(engine));

    /// <summary>The same database through another connection; the first one drops it.</summary>
    public TestLaboratory As(string connection) => new(Engine, connection, isBorrowed: true);

    /// <summary>Saves things as the test itself.</summary>
    public async Task Add(params object[] things)
    {
        await using var lab = Open();
        lab.Act = Act;
        lab.AddRange(things);
        await lab.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    public async Task<Person> AddPerson(string fullName, Roles roles)
    {
        var name = fullName.ToLowerInvariant().Replace(' ', '.');
        var person = new Person
        {
            Id = Guid.CreateVersion7(),
            FullName = fullName,
            Roles = roles,
            UserName = name,
            NormalizedUserName = name.ToUpperInvariant(),
            SecurityStamp = Guid.NewGuid().ToString(),
            CreatedAt = Clock.GetUtcNow(),
        };
        await Add(person);
        return person;
    }

    public async Task<Actor> AddActor(string fullName, Roles roles)
    {
        var person = await AddPerson(fullName, roles);
        return new Actor(person.Id, person.FullName, roles, "page");
    }

    /// <summary>A connection as the database's own tools would open it, without what the program sets up.</summary>
    internal DbConnection Behind() => Engine is StorageEngine.Sqlite
        ? new SqliteConnection(Connection)
        : new NpgsqlConnection(Connection);

    /// <summary>Runs SQL past the program, as somebody with the database's own tools would.</summary>
    public async Task<int> Raw(string sql)
    {
        await using var connection = Behind();
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>An id as it stands in a statement for this engine.</summary>
    public string Quoted(Guid id) => Engine is StorageEngine.Sqlite ? $"'{id.ToString("D").ToUpperInvariant()}'" : $"'{id:D}'";

    public async ValueTask DisposeAsync()
    {
        if (!_isBorrowed)
            await TestDatabases.DropAsync(Engine, Connection);
    }
}
