using LabVolatility.Core.Assessment;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>Reads the results that a program offers to the limits, with the laboratory's precision.</summary>
internal sealed class OfferedResults(KnownCatalogue catalogue)
{
    private static readonly IReadOnlyList<string> Pressures =
        ["Ptot", "Pgas", "VP4", "DVPE", "ASVP", "RVP", "VPCR4", "VPCRx", "RVPE", "LPG-VP", "AVP"];

    /// <summary>Null where the result breaks rules.</summary>
    public MeasuredResult? Read(Given given)
    {
        if (given["quantity"].Text is not { } quantity || (LimitNumberShape.UnitOf(given["value"]) is not { } unit))
            return null;
        var isPressure = Pressures.Contains(quantity);
        if (!isPressure && !OtherQuantities().Contains(quantity))
        {
            given["quantity"].Refuse($"There is no such quantity here; known are {string.Join(", ", Pressures.Concat(OtherQuantities()))}.");
            return null;
        }

        if (isPressure && !PressureUnits.TryParse(unit, out _))
            given["value"].Refuse($"{quantity} is a pressure: {{\"value\": number, \"unit\": \"kPa\"}}.");
        CheckMethod(given["method"], quantity, isPressure);
        var method = given["method"].Text ?? "";
        return isPressure ? Pressure(given, quantity, method) : Other(given, quantity, unit, method);
    }

    private static void CheckMethod(Given method, string quantity, bool isPressure)
    {
        if (isPressure && !method.IsThere)
            method.Refuse($"State the method that gave {quantity}.");
        else if (isPressure && method.Text is { } text && !KnownMethods.Named.Contains(text))
            method.Refuse($"It must be one of {string.Join(", ", KnownMethods.Named)}.");
    }

    private MeasuredResult? Pressure(Given given, string quantity, string method)
    {
        if (given["value"].Pressure is not { } level)
            return null;
        var statement = TestMethods.TryFind(method, out var known)
            ? CataloguePrecision.Find(catalogue.Precision, known, quantity, Container(given["container"]), given["containerVolume"].Volume, level)
            : null;
        return new MeasuredResult(
            quantity, level.Value, level.Unit.Symbol(), method, given["correlation"].Text, 1,
            statement?.RepeatabilityAt(level, level.Unit), statement?.ReproducibilityAt(level, level.Unit));
    }

    // A bare number is in the unit that the limits of its quantity are written in.
    private MeasuredResult? Other(Given given, string quantity, string unit, string method) =>
        (given["value"].Number ?? given["value"].Amount) is { } value
            ? new(quantity, value, unit.Length > 0 ? unit : UnitOf(quantity), method, given["correlation"].Text)
            : null;

    private string UnitOf(string quantity) =>
        catalogue.Areas.SelectMany(a => a.Limits).First(l => l.Limit.Quantity == quantity).Limit.Unit;

    private IEnumerable<string> OtherQuantities() =>
        catalogue.Areas.SelectMany(a => a.Limits).Select(l => l.Limit.Quantity).Distinct().Except(Pressures);

    private static ContainerKind? Container(Given given) => ContainerKinds.TryParse(given.Text, out var kind) ? kind : null;
}
