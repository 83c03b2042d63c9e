using System.Data.Common;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using Microsoft.Extensions.Logging;
using Npgsql;

namespace LabVolatility.Laboratory.Storage.Postgres;

/// <summary>A node's one connection for what the others tell.</summary>
/// <remarks>What is sent while nobody listens is lost: after each new beginning every page is told that it may have missed something.</remarks>
internal sealed class PostgresListener(string connection, NoticeBoard board, Presence presence, TimeProvider clock, ILogger log)
{
    public const string Changes = "labvolatility_changes";
    public const string People = "labvolatility_people";

    /// <summary>Its name on the server.</summary>
    public const string Application = "LabVolatility listener";

    private const int KeepAliveSeconds = 10;

    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(500);

    // Not pooled: what a pooled connection listens to ends when it is given back.
    private readonly string _connection = new NpgsqlConnectionStringBuilder(connection)
    {
        Pooling = false, KeepAlive = KeepAliveSeconds, ApplicationName = Application,
    }.ToString();

    public async Task RunAsync(CancellationToken cancellationToken)
    {
        while (true)
        {
            try
            {
                await ListenAsync(cancellationToken);
            }
            catch (DbException cut)
            {
                log.LogWarning("What other nodes change is not heard now: {Reason}; listening again", cut.Message);
            }

            await Task.Delay(BetweenTries, clock, cancellationToken);
        }
    }

    private async Task ListenAsync(CancellationToken cancellationToken)
    {
        await using var listening = new NpgsqlConnection(_connection);
        listening.Notification += (_, told) => Take(told.Channel, told.Payload);
        await listening.OpenAsync(cancellationToken);
        await using (var listen = new NpgsqlCommand($"LISTEN {Changes}; LISTEN {People}", listening))
            await listen.ExecuteNonQueryAsync(cancellationToken);
        board.Post(Notice.Missed(clock.GetUtcNow()));
        while (true)
            await listening.WaitAsync(cancellationToken);
    }

    private void Take(string channel, string text)
    {
        if (channel == People)
            presence.Hear(text);
        else if (Notice.Read(text) is { } notice)
            board.Post(notice);
        else
            log.LogWarning("A notice of another node can't be read: is one of them of another version?");
    }
}
