using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api.Methods;

/// <summary>The readings that a method can't do without.</summary>
internal static class NeededReadings
{
    public static void Check(Given readings, TestMethod method)
    {
        Need(method, readings["totalPressure"], "the total pressure");
        if (!method.TakesGasOff)
            return;
        var (gas, expansions) = (readings["gasPressure"], readings["expansions"]);
        if (gas.IsThere && expansions.IsThere)
            expansions.Refuse("Send the gas pressure or the expansions, not both.");
        else if (!gas.IsThere && !expansions.IsThere)
            gas.Refuse($"{method.Designation} needs the gas pressure, or three expansions.");
        if (!expansions.IsThere)
            return;
        Need(method, readings["introductionTemperature"], "the temperature of the expansions");
        Need(method, readings["temperature"], "the test temperature, to which the gas part is taken");
    }

    private static void Need(TestMethod method, Given given, string what)
    {
        if (!given.IsThere)
            given.Refuse($"{method.Designation} needs {what}.");
    }
}
