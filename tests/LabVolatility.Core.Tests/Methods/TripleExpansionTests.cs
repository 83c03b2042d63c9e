using CsCheck;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using Xunit;

namespace LabVolatility.Core.Tests.Methods;

/// <summary>
/// Specimens are made by the model itself, TPn = VP + K/(Vn − b), and found again: no figure of the solution is used to
/// make them. The printed check values stand in Published/checks.csv.
/// </summary>
public sealed class TripleExpansionTests
{
    private static readonly Gen<Made> Specimens =
        from vapor in Gen.Decimal[5m, 150m]
        from gas in Gen.Decimal[1m, 9m]
        from solubility in Gen.Decimal[0.06m, 0.55m]
        from first in Gen.Decimal[1.6m, 2.0m]
        from second in Gen.Decimal[2.4m, 3.2m]
        select new Made(Rounding.ToPlaces(vapor, 6), Rounding.ToPlaces(gas, 6), Rounding.ToPlaces(solubility, 6), Rounding.ToPlaces(first, 3), Rounding.ToPlaces(second, 3), 5m);

    [Fact]
    public void TrySolve_MadeSpecimen_IsFoundAgain() => Specimens.Sample(made =>
    {
        var found = Solve(made.Pressures, made);

        return Math.Abs(found.GasAtIntroduction - made.Gas) < 1e-12m
            && Math.Abs(found.VaporAtIntroduction - made.Vapor) < 1e-12m
            && Math.Abs(found.Solubility!.Value - made.Solubility) < 1e-12m
            && found.Implausible is null;
    });

    // The reading ends at 0.1 kPa: each pressure may be off by 0.05, and the gas part by what that makes of it.
    [Fact]
    public void TrySolve_ReadToOneDecimal_StaysWithinThePropagatedError() => Specimens.Where(made => made.Gas > 2m).Sample(made =>
    {
        decimal[] read = [.. made.Pressures.Select(p => Rounding.ToPlaces(p, 1))];
        const decimal Step = 0.0001m;
        var allowed = Enumerable.Range(0, 3).Sum(i =>
        {
            decimal[] moved = [.. made.Pressures];
            moved[i] += Step;
            return Math.Abs(Solve(moved, made).GasAtIntroduction - made.Gas) / Step * 0.05m;
        });

        return Math.Abs(Solve(read, made).GasAtIntroduction - made.Gas) <= (1.35m * allowed) + 0.01m;
    });

    // Only differences of volume enter the gas part: what the chamber holds besides doesn't matter.
    [Fact]
    public void TrySolve_VolumesMovedTogether_GiveTheSameGasPart() => Specimens.Sample(made =>
        Solve(made.Pressures, made).GasAtIntroduction
            == Solve(made.Pressures, made with { V1 = made.V1 + 0.5m, V2 = made.V2 + 0.5m, V3 = made.V3 + 0.5m }).GasAtIntroduction);

    [Fact]
    public void TrySolve_PsiAndKilopascals_AreOneSpecimen() => Specimens.Sample(made =>
    {
        var kpa = Solve(made.Pressures, made);
        Assert.True(TripleExpansion.TrySolve(made.Run(made.Pressures), PressureUnit.Psi, out var psi, out _));

        var back = psi.GasAtTest * 4.4482216152605m / 0.64516m;
        return Math.Abs(back - kpa.GasAtTest) < 1e-12m && Math.Abs(psi.Solubility!.Value - kpa.Solubility!.Value) < 1e-12m;
    });

    // 273.2 as printed, not 273.15: 2.5 · 311 / 293.2.
    [Fact]
    public void TrySolve_TemperatureStep_TakesThePrintedConstant()
    {
        var made = new Made(55m, 2.5m, 0.22m, 1.8m, 2.6m, 5m);

        Assert.Equal(2.651774m, Rounding.ToPlaces(Solve(made.Pressures, made).GasAtTest, 6));
    }

    [Theory]
    [InlineData(57.5, 57.5, 57.5), InlineData(57.6, 57.5, 57.5), InlineData(57.5, 57.6, 57.55)]
    public void TrySolve_EqualWithinResolution_LeavesNoGas(double first, double second, double third)
    {
        var found = Solve([(decimal)first, (decimal)second, (decimal)third], new Made(0m, 0m, 0m, 1.8m, 2.6m, 5m));

        Assert.Equal((0m, 0m, (decimal?)null, (decimal)third), (found.GasAtIntroduction, found.GasAtTest, found.Solubility, found.VaporAtIntroduction));
        Assert.Null(found.Implausible);
    }

    [Theory]
    [InlineData("TP2 below TP3", 60.0, 57.0, 58.0, "has to fall")]
    [InlineData("TP2 equal to TP3", 60.0, 57.0, 57.0, "has to fall")]
    [InlineData("TP1 below TP2", 60.0, 61.0, 57.0, "has to fall")]
    [InlineData("Q at 1: a straight fall", 60.0, 59.0, 56.0, "Q is not above 1")]
    [InlineData("Q below 1", 60.0, 59.5, 56.0, "Q is not above 1")]
    [InlineData("gas above the pressure", 3.0, 2.02, 0.2, "above the pressure itself")]
    public void TrySolve_Unphysical_SaysWhy(string guard, double first, double second, double third, string why)
    {
        decimal[] read = [(decimal)first, (decimal)second, (decimal)third];

        var solved = TripleExpansion.TrySolve(new Made(0m, 0m, 0m, 1.8m, 2.6m, 5m).Run(read), PressureUnit.Kilopascal, out _, out var problem);

        Assert.False(solved, guard);
        Assert.Contains(why, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2.6, 1.8, 5.0, 1.0, "has to grow"), InlineData(1.8, 1.8, 5.0, 1.0, "has to grow"), InlineData(1.8, 5.0, 5.0, 1.0, "has to grow")]
    [InlineData(1.8, 2.6, 5.0, 1.8, "liquid"), InlineData(1.8, 2.6, 5.0, 0.0, "liquid"), InlineData(0.0, 2.6, 5.0, 1.0, "0.001 mL")]
    public void TrySolve_VolumesThatCantBe_SayWhy(double first, double second, double third, double liquid, string why)
    {
        var run = Run([(decimal)first, (decimal)second, (decimal)third], [65.3m, 60.8m, 57.5m], (decimal)liquid);

        Assert.False(TripleExpansion.TrySolve(run, PressureUnit.Kilopascal, out _, out var problem));
        Assert.Contains(why, problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2), InlineData(4)]
    public void TrySolve_NotThree_SaysSo(int count)
    {
        var run = Run([1.8m, 2.6m, 3.5m, 5m], [65.3m, 60.8m, 58.5m, 57.5m], 1m);

        Assert.False(TripleExpansion.TrySolve(run with { Expansions = [.. run.Expansions.Take(count)] }, PressureUnit.Kilopascal, out _, out var problem));
        Assert.Contains($"{count} are given", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.05"), InlineData("0.6")]
    public void Implausible_SolubilityAtTheEdge_IsBelieved(string edge) => Assert.Null(WithSolubility(decimal.Parse(edge, System.Globalization.CultureInfo.InvariantCulture)).Implausible);

    [Theory]
    [InlineData("0.049"), InlineData("0.601")]
    public void Implausible_SolubilityBeyond_NamesTheModelsLimit(string beyond) =>
        Assert.Contains("wide-boiling", WithSolubility(decimal.Parse(beyond, System.Globalization.CultureInfo.InvariantCulture)).Implausible, StringComparison.Ordinal);

    [Fact]
    public void TrySolve_SpecimenUnknown_GivesNoSolubility()
    {
        var run = Run([1.8m, 2.6m, 5m], [65.3m, 60.8m, 57.5m], null);

        Assert.True(TripleExpansion.TrySolve(run, PressureUnit.Kilopascal, out var found, out _));
        Assert.Null(found.Solubility);
        Assert.Equal(2.5235m, Rounding.ToPlaces(found.GasAtIntroduction, 4));
    }

    private static GasCorrection WithSolubility(decimal solubility) =>
        new(PressureUnit.Kilopascal, 55m, 2.5m, 2.65m, solubility, []);

    private static GasCorrection Solve(IReadOnlyList<decimal> kpa, Made made) =>
        TripleExpansion.TrySolve(made.Run(kpa), PressureUnit.Kilopascal, out var found, out var problem)
            ? found
            : throw new InvalidOperationException(problem);

    private static ExpansionRun Run(IReadOnlyList<decimal> millilitres, IReadOnlyList<decimal> kpa, decimal? liquid) => new(
        [.. millilitres.Zip(kpa, (v, p) => new Expansion(Volume.From(v, VolumeUnit.Millilitre), AbsolutePressure.From(p, PressureUnit.Kilopascal)))],
        liquid is { } specimen ? Volume.From(specimen, VolumeUnit.Millilitre) : null,
        Temperature.From(20m, TemperatureUnit.Celsius), Temperature.From(37.8m, TemperatureUnit.Celsius));

    /// <summary>A specimen of 1 mL, by the forward model.</summary>
    private sealed record Made(decimal Vapor, decimal Gas, decimal Solubility, decimal V1, decimal V2, decimal V3)
    {
        private decimal B => 1m - Solubility;

        public IReadOnlyList<decimal> Pressures => [.. new[] { V1, V2, V3 }.Select(v => Vapor + (Gas * (V3 - B) / (v - B)))];

        public ExpansionRun Run(IReadOnlyList<decimal> kpa) => TripleExpansionTests.Run([V1, V2, V3], kpa, 1m);
    }
}
