using System.Globalization;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Api.Certificates;

internal static class CertificateEndpoints
{
    private const string Pdf = "application/pdf";

    public static void MapCertificates(this IEndpointRouteBuilder api)
    {
        api.MapGet("/certificates/{number}", ReadAsync)
            .Called("readCertificate", "The certificate as it was issued, PDF; its latest revision")
            .Needs(KeyScopes.Read).Refuses(400, 404).Produces<byte[]>(StatusCodes.Status200OK, Pdf).Asks("revision", "1 for the first issue; default: the latest.");
        api.MapGet("/certificates/check/{code}", CheckAsync)
            .Called("checkCertificate", "Whether a certificate is genuine and in force; needs no key")
            .AllowAnonymous().RequireRateLimiting(InterfaceLimits.CertificateCheck).Refuses(404).Produces<CertificateCheckAnswer>();
    }

    private static async Task<IResult> ReadAsync(HttpContext http, string number, ReadCertificates certificates)
    {
        var mistakes = new Mistakes();
        var query = new QueryText(http.Request.Query, mistakes, "revision");
        query.Check();
        int? revision = null;
        if (query["revision"] is { } text)
        {
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var typed) && typed > 0)
                revision = typed;
            else
                mistakes.Add("/revision", "It must be a whole number from 1.");
        }

        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        return !PathText.IsPlain(number) || await certificates.ByNumber(number, revision, http.RequestAborted) is not { } document
            ? ProblemAnswer.Of(Answer<string>.NotFound("There is no certificate of this number."))
            : TypedResults.File(document.Pdf, Pdf, $"{document.Number}-{document.Revision}.pdf");
    }

    private static async Task<IResult> CheckAsync(string code, ReadCertificates certificates, LaboratoryFacts laboratory, CancellationToken cancel)
    {
        if (await certificates.ByCode(code, cancel) is not { } found)
            return ProblemAnswer.Of(Answer<string>.NotFound("No certificate carries this code."));
        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(found.IssuedAt, laboratory.Zone).DateTime);
        return TypedResults.Ok(new CertificateCheckAnswer(found.Number, found.Batch, found.Grade, found.Decision, day, found.Superseded));
    }
}
