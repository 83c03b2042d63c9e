using CsCheck;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

public sealed class CorrelationsTests
{
    private static readonly string[] InBothUnits = ["ASTM D5191", "EPA", "CARB"];

    // Worked from the constants as printed: ASTM D5191-22 equation 1; 40 CFR 80 appendix E method 3, 9.2; 13 CCR 2297.
    public static TheoryData<string, decimal, PressureUnit, decimal> CheckValues => new()
    {
        { "ASTM D5191", 70.0m, PressureUnit.Kilopascal, 63.77m },
        { "ASTM D5191", 10.00m, PressureUnit.Psi, 9.102m },
        { "EN 13016-1", 70.0m, PressureUnit.Kilopascal, 63.77m },
        { "EPA", 70.0m, PressureUnit.Kilopascal, 64.53m },
        { "EPA", 10.00m, PressureUnit.Psi, 9.213m },
        { "EPA", 7.00m, PressureUnit.Psi, 6.345m },
        { "EPA", 9.83m, PressureUnit.Psi, 9.05048m },
        { "CARB", 70.0m, PressureUnit.Kilopascal, 63.11m },
        { "CARB", 10.00m, PressureUnit.Psi, 9.005m },
        { "ASTM D5191", 9.60m, PressureUnit.Psi, 8.716m },
        { "EPA", 9.60m, PressureUnit.Psi, 8.8306m },
        { "CARB", 9.60m, PressureUnit.Psi, 8.6162m },
    };

    [Theory, MemberData(nameof(CheckValues))]
    public void At_CheckValue_IsExact(string name, decimal total, PressureUnit unit, decimal expected) =>
        Assert.Equal(expected, Correlations.Named(name)!.FormFor(unit).At(total));

    // The two printings of one equation are rounded apart by less than the resolution of 0.01 psi.
    [Fact]
    public void At_PsiAndKilopascals_AgreeWithinTheResolution() =>
        Gen.Select(Gen.Decimal[2m, 18m], Gen.Int[0, 2]).Sample((psi, index) =>
        {
            var correlation = Correlations.Named(InBothUnits[index])!;
            var total = AbsolutePressure.From(psi, PressureUnit.Psi);
            var fromKpa = PressureUnits.Convert(correlation.FormFor(PressureUnit.Kilopascal).At(total.In(PressureUnit.Kilopascal)), PressureUnit.Kilopascal, PressureUnit.Psi);
            return Math.Abs(fromKpa - correlation.FormFor(PressureUnit.Psi).At(psi)) < 0.001m;
        });

    [Fact]
    public void At_HigherTotal_GivesHigherPressure() =>
        Gen.Select(Gen.Decimal[5m, 120m], Gen.Decimal[0.001m, 10m], Gen.Int[0, 3]).Sample((total, more, index) =>
        {
            var correlation = Correlations.All[index];
            return At(correlation, total + more) > At(correlation, total);
        });

    [Fact]
    public void Find_RegulatoryOnEn_IsNull()
    {
        Assert.Null(Correlations.Find("EN 13016-1", Authority.Epa));
        Assert.Null(Correlations.Find("EN 13016-1", Authority.Carb));
        Assert.Null(Correlations.Find("ASTM D5191", Authority.En));
        Assert.Equal("RVP", Correlations.Find("ASTM D5191", Authority.Epa)!.Quantity);
    }

    [Fact]
    public void PrintedUnitFor_UnitNotPrinted_IsKilopascals()
    {
        var european = Correlations.Named("EN 13016-1")!;

        Assert.Equal(PressureUnit.Kilopascal, european.PrintedUnitFor(PressureUnit.Psi));
        Assert.Equal(PressureUnit.Kilopascal, Correlations.Named("EPA")!.PrintedUnitFor(PressureUnit.Millibar));
    }

    [Fact]
    public void Equation_AsPrinted_NamesItsReading()
    {
        Assert.Equal("DVPE = 0.965 · Ptot − 3.78 kPa", Correlations.Named("ASTM D5191")!.Equation(PressureUnit.Kilopascal));
        Assert.Equal("RVP = 0.956 · Ptot − 0.347 psi", Correlations.Named("EPA")!.Equation(PressureUnit.Psi));
        Assert.Equal("DVPE = 0.965 · ASVP − 3.78 kPa", Correlations.Named("EN 13016-1")!.Equation(PressureUnit.Psi));
    }

    private static decimal At(Correlation correlation, decimal kpa) =>
        correlation.FormFor(PressureUnit.Kilopascal).At(kpa);
}
