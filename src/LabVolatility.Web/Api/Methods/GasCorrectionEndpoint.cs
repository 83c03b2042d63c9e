using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Methods;

/// <summary>Three expansions of one specimen: vapour pressure, gas part, solubility; nothing is stored.</summary>
internal static class GasCorrectionEndpoint
{
    public static void MapGasCorrection(this IEndpointRouteBuilder api) =>
        api.MapPost("/calculations/gas-correction", (Delegate)CalculateAsync)
            .Called("calculateGasCorrection", "From three expansions to the gas part of the pressure")
            .Needs(KeyScopes.Calculate).Takes(GasCorrectionShape.Shape).Refuses(422).Produces<GasCorrectionAnswer>();

    private static async Task<IResult> CalculateAsync(HttpContext http)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => GasCorrectionShape.Shape);
        if (refusal is not null)
            return refusal;
        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        var run = new ExpansionRun(
            ReadingsShape.ReadExpansions(body["expansions"]), body["liquidVolume"].Volume,
            body["introductionTemperature"].Temperature!.Value, body["testTemperature"].Temperature!.Value);
        if (!TripleExpansion.TrySolve(run, PressureUnit.Kilopascal, out var found, out var problem))
            return ProblemAnswer.Of(StatusCodes.Status422UnprocessableEntity, problem);
        var total = body["totalPressure"].Pressure!.Value.In(PressureUnit.Kilopascal);
        return found.GasAtTest > total
            ? ProblemAnswer.Of(StatusCodes.Status422UnprocessableEntity, "At the test temperature the gas part would be above the total pressure: check the pressures, the temperatures and their units.")
            : TypedResults.Ok(GasCorrectionAnswer.Of(found, total - found.GasAtTest));
    }
}
