using LabVolatility.Core.Limits;
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
    public void GradeEntry_TreeAndAgreement_ComeBackAsTheyWere()
    {
        var grade = new Grade
        {
            Code = "regular-87",
            Name = "Regular 87",
            Tree = new RetestTree([new(RetestOccasion.DoesNotConform, [new(RetestKind.MoreContainers, 2, 3), new(RetestKind.HoldAndCall)])]),
            Parties = new PartyAgreement(PartyRule.AstmD3244, 0.050m, Comparison.Absolute),
        };

        var again = GradeEntry.Of(grade).Read(out _)!;

        Assert.Equal(new PartyAgreement(PartyRule.AstmD3244, 0.05m, Comparison.Absolute), again.Parties);
        Assert.Equal(grade.Tree.Rules[0].Steps, again.Tree.For(RetestOccasion.DoesNotConform).Steps);
        Assert.Equal(RetestKind.HoldAndCall, Assert.Single(again.Tree.For(RetestOccasion.NotDecided).Steps).Kind);
    }

    [Fact]
    public void GradeEntry_NotTouched_KeepsCommonPractice()
    {
        var again = GradeEntry.Of(new Grade { Code = "a", Name = "A" }).Read(out _)!;

        Assert.Equal(FactStatus.CommonPractice, again.Tree.Status);
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
