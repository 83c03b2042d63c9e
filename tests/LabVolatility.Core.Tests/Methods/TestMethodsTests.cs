using LabVolatility.Core.Methods;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

public sealed class TestMethodsTests
{
    [Fact]
    public void TryFind_ByDesignation_IsFound()
    {
        Assert.True(TestMethods.TryFind("ASTM D5191", out var method));
        Assert.Equal("ASTM D5191-22", method.Citation);
        Assert.True(TestMethods.TryFind("EN 13016-1", out var european));
        Assert.Equal("EN 13016-1:2024", european.Citation);
        Assert.False(TestMethods.TryFind("D5191", out _));
    }

    [Fact]
    public void AreOwn_OnlyTheEuropeanExpansion_HasNoPublicCorrelation() =>
        Assert.Equal(["EN 13016-3"], TestMethods.All.Where(Correlations.AreOwn).Select(m => m.Designation));

    [Fact]
    public void Cautions_ToAcknowledge_AreAtMostTwo() =>
        Assert.All(TestMethods.All, method => Assert.InRange(method.Cautions.Count(c => c.Gate == CautionGate.Acknowledge), 1, 2));

    [Fact]
    public void Cautions_Each_HaveAtMost25Words() =>
        Assert.All(TestMethods.All.SelectMany(m => m.Cautions), caution => Assert.InRange(caution.Text.Split(' ').Length, 5, 25));

    [Fact]
    public void Authorities_OfEachMethod_HaveACorrelationUnlessItIsTheLaboratorys() =>
        Assert.All(TestMethods.All, method =>
        {
            Assert.Contains(method.DefaultAuthority, method.Authorities);
            Assert.All(Authorities.All, authority => Assert.Equal(
                method.Authorities.Contains(authority) && !Correlations.AreOwn(method), Correlations.Find(method.Designation, authority) is not null));
        });

    [Fact]
    public void Words_OfTheInterface_ReadBack()
    {
        Assert.Equal(["gasoline", "ethanol-blend", "crude-live", "crude-dead", "lpg", "solvent", "aviation-turbine", "pure-compound"], SampleKinds.All.Select(k => k.Text()));
        Assert.Equal(["glass-bottle", "metal-can", "plastic-bottle", "floating-piston-cylinder", "manual-piston-cylinder", "pressure-cylinder"], ContainerKinds.All.Select(k => k.Text()));
        Assert.Equal(["published", "from-memory", "common-practice", "laboratory"], FactStatuses.All.Select(s => s.Text()));
        Assert.Equal(["ASTM", "EN", "EPA", "CARB"], Authorities.All.Select(a => a.Text()));
        Assert.All(SampleKinds.All, kind => Assert.True(SampleKinds.TryParse(kind.Text(), out var read) && read == kind));
        Assert.False(ContainerKinds.TryParse("bucket", out _));
    }
}
