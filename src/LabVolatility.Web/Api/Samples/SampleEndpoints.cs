using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Samples;

internal static class SampleEndpoints
{
    public static void MapSamples(this IEndpointRouteBuilder api)
    {
        api.MapPost("/samples", RegisterAsync)
            .Called("registerSample", "Register or announce a sample")
            .Needs(KeyScopes.Write).Takes(SampleRequestShape.Shape).Refuses(409).Produces<SampleAnswer>(StatusCodes.Status201Created);
        api.MapGet("/samples/{number}", ReadAsync)
            .Called("readSample", "A sample with its containers, tests and determinations")
            .Needs(KeyScopes.Read).Refuses(404).Produces<SampleAnswer>();
    }

    private static async Task<IResult> RegisterAsync(HttpContext http, RegisterSample register, ReadSample read)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => SampleRequestShape.Shape);
        if (refusal is not null)
            return refusal;
        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        var answer = await register.Run(http.KeyActor(), SampleRequestShape.Read(body), http.RequestAborted);
        if (!answer.Ok)
            return ProblemAnswer.Of(answer);
        var sheet = await read.Run(answer.Value!, http.RequestAborted);
        return TypedResults.Created($"{Interface.BasePath}/samples/{Uri.EscapeDataString(answer.Value!)}", SampleAnswer.Of(sheet!));
    }

    private static async Task<IResult> ReadAsync(string number, ReadSample read, CancellationToken cancel) =>
        !PathText.IsPlain(number) || await read.Run(number, cancel) is not { } sheet
            ? ProblemAnswer.Of(Answer<string>.NotFound("There is no sample of this number."))
            : TypedResults.Ok(SampleAnswer.Of(sheet));
}
