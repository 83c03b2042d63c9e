using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Methods;

/// <summary>A request for results, read and checked across its members.</summary>
internal sealed record ResultsRequest(
    TestMethod Method, Readings Readings, SampleRead Sample, Authority Authority, PressureUnit ReportUnit)
{
    /// <summary>The laboratory's own correlation, where the method's isn't public; null: not set.</summary>
    public Correlation? Own { get; init; }

    /// <summary>Null where the request breaks rules.</summary>
    public static ResultsRequest? Read(Given body, Mistakes mistakes)
    {
        if (!TestMethods.TryFind(body["method"].Text, out var method))
            return null;
        var readings = body["readings"];
        if (readings.IsObject)
            NeededReadings.Check(readings, method);
        MethodMembers.Check(body, method);
        var authority = ReadAuthority(body["authority"], method);
        if (body["reidEquivalent"].Flag == true)
            body["reidEquivalent"].Refuse($"A Reid equivalent is for crude oil methods; {method.Designation} isn't one.");
        if (mistakes.Any)
            return null;
        var unit = PressureUnits.TryParse(body["reportUnit"].Text, out var named) ? named : PressureUnit.Kilopascal;
        return new ResultsRequest(method, ReadReadings(readings), SampleShape.Read(body["sample"], method), authority, unit);
    }

    private static Authority ReadAuthority(Given given, TestMethod method)
    {
        if (!Authorities.TryParse(given.Text, out var authority))
            return method.DefaultAuthority;
        if (!method.Authorities.Contains(authority))
        {
            var own = Correlations.All.Where(c => c.Authority == authority).Select(c => c.Method).Distinct();
            given.Refuse($"The correlation of {authority.Text()} rests on {string.Join(", ", own)}, not on {method.Designation}.");
        }

        return authority;
    }

    private static Readings ReadReadings(Given readings) => new()
    {
        TotalPressure = readings["totalPressure"].Pressure,
        Temperature = readings["temperature"].Temperature,
        VaporLiquidRatio = readings["vaporLiquidRatio"].Number,
        GasPressure = readings["gasPressure"].Pressure,
        Expansions = ReadingsShape.ReadExpansions(readings["expansions"]),
        LiquidVolume = readings["liquidVolume"].Volume,
        IntroductionTemperature = readings["introductionTemperature"].Temperature,
        BarometricPressure = readings["barometricPressure"].Pressure,
    };
}
