using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

internal static class DeterminationShape
{
    private static readonly ObjectShape Handling = new("Handling",
        new Member("chilledTo", QuantityShape.Temperature),
        new Member("airSaturated", new FlagShape { About = "null: nobody stated it." }),
        new Member("fillPercent", new NumberShape(Above: 0, High: 100) { About = "Default: the container's." }),
        new Member("hazy", new FlagShape()),
        new Member("phases", new NumberShape(Low: 1, High: 9, Whole: true)),
        new Member("atEquilibrium", new FlagShape { About = "Whether each pressure stood still when it was read." }),
        new Member("rinseCycles", new NumberShape(Low: 0, High: 20, Whole: true) { About = "Of the chamber with the sample; triple expansion." }),
        new Member("consecutiveDeterminations", new NumberShape(Low: 1, High: 20, Whole: true) { About = "Runs of the instrument on the container; triple expansion." }));

    private static readonly string[] OfNoMethod = ["gaugePressure", "composition", "temperatureAtRatio"];
    private static readonly string[] OfExpansions = ["gasPressure", "introductionTemperature", "expansions", "liquidVolume"];

    public static ObjectShape Shape { get; } = new("NewDetermination",
        new Member("method", KnownMethods.Shape, true),
        new Member("procedure", new TextShape(20) { About = "For methods that have procedures." }),
        new Member("containerNumber", new NumberShape(Low: 1, High: 99, Whole: true), true),
        new Member("instrument", new TextShape(40), true),
        new Member("measuredAt", new InstantShape { About = "Default: now." }),
        new Member("measuredBy", new TextShape(100) { About = "Account of the person who measured; null waits at the bench for a person." }),
        new Member("readings", ReadingsShape.Shape, true),
        new Member("handling", Handling),
        new Member("externalId", new TextShape(100) { About = "The same from the same instrument again stores nothing new." }));

    public static DeterminationRequest? Read(string sample, Given body, Mistakes mistakes)
    {
        var readings = body["readings"];
        if (TestMethods.TryFind(body["method"].Text, out var method))
        {
            MethodMembers.Check(body, method);
            foreach (var name in method.TakesGasOff ? OfNoMethod : [.. OfNoMethod, .. OfExpansions])
            {
                if (readings[name].IsThere)
                    readings[name].Refuse($"{method.Designation} keeps no such reading; leave it out.");
            }
        }

        if (mistakes.Any)
            return null;
        var handling = body["handling"];
        return new DeterminationRequest
        {
            SampleNumber = sample,
            Method = body["method"].Text!,
            ContainerNumber = body["containerNumber"].Whole!.Value,
            Instrument = body["instrument"].Words,
            MeasuredAt = body["measuredAt"].Instant,
            MeasuredBy = body["measuredBy"].Words,
            ExternalId = body["externalId"].Words,
            Readings = new ReadingsAsTyped
            {
                TotalPressure = Reading(readings["totalPressure"]),
                Temperature = Reading(readings["temperature"]),
                VaporLiquidRatio = readings["vaporLiquidRatio"] is { Number: { } ratio } given ? new TypedReading(given.Digits!, ratio, "") : null,
                BarometricPressure = Reading(readings["barometricPressure"]),
                GasPressure = Reading(readings["gasPressure"]),
                Expansions = [.. readings["expansions"].Items.Select(e => new ExpansionAsTyped(Reading(e["volume"])!, Reading(e["pressure"])!))],
                LiquidVolume = Reading(readings["liquidVolume"]),
                IntroductionTemperature = Reading(readings["introductionTemperature"]),
            },
            Handling = new HandlingAsTyped
            {
                ChilledTo = Reading(handling["chilledTo"]),
                AirSaturated = handling["airSaturated"].Flag,
                FillPercent = handling["fillPercent"].Number,
                Hazy = handling["hazy"].Flag ?? false,
                Phases = handling["phases"].Whole ?? 1,
                AtEquilibrium = handling["atEquilibrium"].Flag,
                RinseCycles = handling["rinseCycles"].Whole,
                ConsecutiveDeterminations = handling["consecutiveDeterminations"].Whole,
            },
        };
    }

    // The digits as they were sent are kept: 62.40 is not 62.4.
    private static TypedReading? Reading(Given given) =>
        given.Amount is { } amount ? new TypedReading($"{given["value"].Digits} {given.Unit}", amount, given.Unit!) : null;
}
