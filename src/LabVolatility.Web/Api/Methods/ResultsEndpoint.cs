using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Methods;

/// <summary>From readings to reported results; nothing is stored.</summary>
internal static class ResultsEndpoint
{
    public static void MapResults(this IEndpointRouteBuilder api) =>
        api.MapPost("/calculations/results", CalculateAsync)
            .Called("calculateResults", "From readings to reported results by a test method")
            .Needs(KeyScopes.Calculate).Takes(ResultsShape.Shape).Refuses(422).Produces<ResultsAnswer>();

    private static async Task<IResult> CalculateAsync(HttpContext http, AnsweredPrecision precision, AnsweredCorrelation correlation)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => ResultsShape.Shape);
        if (refusal is not null)
            return refusal;
        if (ResultsRequest.Read(body, mistakes) is not { } request)
            return ProblemAnswer.Of(mistakes);
        if (request.Readings.Run is { } run && request.Method.TakesGasOff && !TripleExpansion.TrySolve(run, PressureUnit.Kilopascal, out _, out var problem))
            return ProblemAnswer.Of(StatusCodes.Status422UnprocessableEntity, problem);
        request = request with { Own = await correlation.Run(request.Method, http.RequestAborted) };
        return TypedResults.Ok(await WorkOutAsync(request, precision, http.RequestAborted));
    }

    private static async Task<ResultsAnswer> WorkOutAsync(ResultsRequest request, AnsweredPrecision precision, CancellationToken cancel)
    {
        var outcome = Evaluate(request, null);
        var correlated = outcome.Results.FirstOrDefault(r => r.Correlation.Length > 0) ?? outcome.Results.FirstOrDefault(r => r.Quantity == Correlation.VaporPressure);
        if (correlated is not null && AbsolutePressure.TryFrom(correlated.Value, correlated.Unit, out var level))
        {
            var statement = CataloguePrecision.Find(
                await precision.Run(cancel), request.Method, correlated.Quantity, request.Sample.ContainerStated,
                request.Sample.Condition.ContainerVolume, level);
            outcome = Evaluate(request, statement);
        }

        return new ResultsAnswer(
            outcome.Method.Designation, outcome.Method.Edition, [.. outcome.Results.Select(ResultAnswer.Of)],
            Quantity.Of(outcome.Repeatability, request.ReportUnit), Quantity.Of(outcome.Reproducibility, request.ReportUnit),
            [.. outcome.Findings.Concat(request.Sample.Supposed).Select(FindingAnswer.Of)]);
    }

    private static MethodOutcome Evaluate(ResultsRequest request, Core.Precision.PrecisionStatement? statement) => Measurement.Evaluate(
        request.Method, request.Readings, request.Sample.Condition, request.Authority, request.ReportUnit, statement, request.Own);
}
