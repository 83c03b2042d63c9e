using LabVolatility.Web.Records;
using Xunit;

namespace LabVolatility.Web.Tests.Records;

public sealed class RecordDifferenceTests
{
    [Fact]
    public void Of_ChangedMember_ComesFirst()
    {
        var lines = RecordDifference.Of("""{"active":true,"name":"A"}""", """{"active":true,"name":"B","place":null}""");

        Assert.Equal([new RecordDifference("name", "A", "B"), new RecordDifference("active", "true", "true")], lines);
    }

    [Fact]
    public void Of_NewThing_HasNothingBefore()
    {
        var lines = RecordDifference.Of(null, """{"name":"A"}""");

        Assert.Equal([new RecordDifference("name", null, "A")], lines);
    }
}
