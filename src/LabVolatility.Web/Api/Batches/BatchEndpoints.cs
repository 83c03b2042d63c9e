using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Batches;

/// <summary>Batches and their assessment. Deciding is not here: no key can sign.</summary>
internal static class BatchEndpoints
{
    public static void MapBatches(this IEndpointRouteBuilder api)
    {
        api.MapPost("/batches", RegisterAsync)
            .Called("registerBatch", "Register a batch")
            .Needs(KeyScopes.Write).Takes(BatchShape.Shape).Refuses(409).Produces<BatchAnswer>(StatusCodes.Status201Created);
        api.MapGet("/batches/{number}", ReadAsync)
            .Called("readBatch", "A batch with its samples and the decision in force")
            .Needs(KeyScopes.Read).Refuses(404).Produces<BatchAnswer>();
        api.MapGet("/batches/{number}/assessment", AssessAsync)
            .Called("assessBatch", "A batch held against the limits of its destinations")
            .Needs(KeyScopes.Read).Refuses(404).Produces<AssessmentAnswer>();
    }

    private static async Task<IResult> RegisterAsync(HttpContext http, RegisterBatch register, FindBatch find)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => BatchShape.Shape);
        if (refusal is not null)
            return refusal;
        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        var request = BatchShape.Read(body);
        var answer = await register.Run(http.KeyActor(), request, http.RequestAborted);
        var found = answer.Ok || answer.Kind == AnswerKind.Conflict ? await find.Run(request.Number!, http.RequestAborted) : null;
        return answer.Ok
            ? TypedResults.Created($"{Interface.BasePath}/batches/{Uri.EscapeDataString(answer.Value!)}", BatchAnswer.Of(found!))
            : ProblemAnswer.Of(answer, found is null ? null : BatchAnswer.Of(found));
    }

    private static async Task<IResult> ReadAsync(string number, FindBatch find, CancellationToken cancel) =>
        !PathText.IsPlain(number) || await find.Run(number, cancel) is not { } found ? None() : TypedResults.Ok(BatchAnswer.Of(found));

    private static async Task<IResult> AssessAsync(string number, AssessBatch assess, CancellationToken cancel) =>
        !PathText.IsPlain(number) || await assess.Run(number, cancel) is not { } assessed ? None() : TypedResults.Ok(AssessmentAnswer.Of(assessed));

    private static ProblemAnswer None() => ProblemAnswer.Of(Answer<string>.NotFound("There is no batch of this number."));
}
