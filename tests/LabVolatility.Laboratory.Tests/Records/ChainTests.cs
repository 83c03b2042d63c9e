using LabVolatility.Laboratory.Records;
using Xunit;

namespace LabVolatility.Laboratory.Tests.Records;

/// <summary>Test vectors of the format "labvolatility-record-1": a verifier written from its description alone must give these.</summary>
public sealed class ChainTests
{
    [Fact]
    public void Content_FirstRecord_AsDescribed() =>
        Assert.Equal(
            """{"action":"keep tank","actor":"Ida Berg","actorId":"0198c0de-0000-7000-8000-000000000001","after":"{\"code\":\"T-1\",\"name\":\"Tank é\"}","at":"2026-05-04T08:00:00.000001Z","before":null,"build":"0.1.0","origin":"page","previousHash":"0000000000000000000000000000000000000000000000000000000000000000","reason":null,"sequence":1,"subject":"tank","subjectId":"T-1"}""",
            Chain.Content(First));

    // Worked out apart from the program: printf '%s\n%s' labvolatility-record-1 "$content" | sha256sum
    [Fact]
    public void HashOf_TwoRecords_AsPublished()
    {
        Assert.Equal("ad892a6eef6129563ad8fa8cb7c3696844dd50d9c6bb37f73bdbcc8453b11afa", Chain.HashOf(First));
        Assert.Equal("d69ac0da7cd4eaa5d4fe17b4c4458d7ac26c1d4c5c4ff26c5885bec656ea8ac9", Chain.HashOf(Second));
    }

    private static AuditRecord First => new()
    {
        Sequence = 1,
        At = new DateTimeOffset(2026, 5, 4, 10, 0, 0, TimeSpan.FromHours(2)).AddTicks(19),
        ActorId = Guid.Parse("0198C0DE-0000-7000-8000-000000000001"),
        Actor = "Ida Berg",
        Origin = "page",
        Action = "keep tank",
        Subject = "tank",
        SubjectId = "T-1",
        After = "{\"code\":\"T-1\",\"name\":\"Tank é\"}",
        Build = "0.1.0",
        PreviousHash = Chain.Genesis,
        Hash = "",
    };

    private static AuditRecord Second => new()
    {
        Sequence = 2,
        At = new DateTimeOffset(2026, 5, 4, 8, 1, 0, TimeSpan.Zero),
        Actor = "program",
        Origin = "start",
        Action = "delete tank",
        Subject = "tank",
        SubjectId = "T-1",
        Before = "{\"code\":\"T-1\",\"name\":\"Tank é\"}",
        Reason = "gone\n\"for good\"",
        Build = "0.1.0",
        PreviousHash = Chain.HashOf(First),
        Hash = "",
    };
}
