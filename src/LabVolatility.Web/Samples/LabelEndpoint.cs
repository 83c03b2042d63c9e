using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.People;

namespace LabVolatility.Web.Samples;

/// <summary>The labels of a sample's containers, one a page, for the label printer or plain paper.</summary>
public static class LabelEndpoint
{
    public static void MapLabels(this WebApplication app) =>
        app.MapGet("/samples/{number}/labels.pdf", async (string number, HttpContext http, CurrentActor people, ReadLabels read) =>
        {
            var actor = await people.OfAsync(http.User, http.RequestAborted);
            if (!actor.May(Right.Read))
                return Results.Forbid();
            var labels = await read.Run(number, http.RequestAborted);
            return labels.Count == 0
                ? Results.NotFound()
                : Results.File(LabelPdf.Write(labels), "application/pdf");
        }).RequireAuthorization().ExcludeFromDescription();
}
