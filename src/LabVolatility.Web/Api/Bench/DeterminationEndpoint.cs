using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Bench;

internal static class DeterminationEndpoint
{
    public static void MapDeterminations(this IEndpointRouteBuilder api) =>
        api.MapPost("/samples/{number}/determinations", ReportAsync)
            .Called("reportDetermination", "Report one run on an instrument")
            .Needs(KeyScopes.Write).Takes(DeterminationShape.Shape).Refuses(404, 409)
            .Produces<DeterminationAnswer>(StatusCodes.Status201Created).Produces<DeterminationAnswer>();

    private static async Task<IResult> ReportAsync(HttpContext http, string number, ReportDetermination report)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => DeterminationShape.Shape);
        if (refusal is not null)
            return refusal;
        if (!PathText.IsPlain(number))
            return ProblemAnswer.Of(Answer<string>.NotFound("There is no sample of this number."));
        if (DeterminationShape.Read(number, body, mistakes) is not { } request)
            return ProblemAnswer.Of(mistakes);
        var answer = await report.Run(http.KeyActor(), request, http.RequestAborted);
        return answer.Kind switch
        {
            AnswerKind.Done => TypedResults.Created($"{Interface.BasePath}/samples/{Uri.EscapeDataString(number)}", DeterminationAnswer.Of(answer.Value!)),
            AnswerKind.Repeated => TypedResults.Ok(DeterminationAnswer.Of(answer.Value!)),
            _ => ProblemAnswer.Of(answer),
        };
    }
}
