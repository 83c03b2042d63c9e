using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Setup;
using Xunit;

namespace LabVolatility.Web.Tests.Setup;

public sealed class GradeEntryTests
{
    [Fact]
    public void GradeEntry_OfAGrade_ComesBackAsItWas()
    {
        var grade = new Grade
        {
            Code = "regular-87",
            Name = "Regular 87",
            Tests = [new GradeTest("ASTM D5191", [Authority.Epa, Authority.Astm], true, 6)],
            Confidence = 0.950m,
            ResultsInAll = 8,
        };

        var again = GradeEntry.Of(grade).Read(out var problems);

        Assert.Empty(problems);
        Assert.Equal([Authority.Epa, Authority.Astm], again!.Tests[0].Authorities);
        Assert.Equal((0.95m, 8, 6, true), (again.Confidence, again.ResultsInAll, again.Tests[0].HoursToResult, again.Tests[0].Duplicate));
    }

    [Fact]
    public void GradeTestEntry_AuthorityPutTwice_StandsInItsLastPlaceOnly()
    {
        var test = new GradeTestEntry();

        test.Put(1, "EPA");
        test.Put(0, "EPA");

        Assert.Equal([Authority.Epa], test.Read().Authorities);
    }

    [Fact]
    public void GradeTestEntry_OtherMethod_TakesItsOwnEquation()
    {
        var test = new GradeTestEntry();

        test.Take("EN 13016-1");

        Assert.Equal([Authority.En], test.Read().Authorities);
    }
}
