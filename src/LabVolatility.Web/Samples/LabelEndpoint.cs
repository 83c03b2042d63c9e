using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.People;

namespace LabVolatility.Web.Samples;

/// <summary>Labels for the label printer or plain paper: of a sample's containers, one a page, and of an instrument.</summary>
public static class LabelEndpoint
{
    public static void MapLabels(this WebApplication app)
    {
        app.MapGet("/samples/{number}/labels.pdf", SampleAsync).RequireAuthorization().ExcludeFromDescription();
        app.MapGet("/instruments/{code}/label.pdf", InstrumentAsync).RequireAuthorization().ExcludeFromDescription();
    }

    private static async Task<IResult> SampleAsync(string number, HttpContext http, CurrentActor people, ReadLabels read)
    {
        if (!await MayReadAsync(http, people))
            return Results.Forbid();
        var labels = await read.Run(number, http.RequestAborted);
        return labels.Count == 0 ? Results.NotFound() : Results.File(LabelPdf.Write(labels), "application/pdf");
    }

    private static async Task<IResult> InstrumentAsync(string code, HttpContext http, CurrentActor people, ReadInstrument read)
    {
        if (!await MayReadAsync(http, people))
            return Results.Forbid();
        var instrument = (await read.Run(code, http.RequestAborted))?.Line.Instrument;
        return instrument is not null && InstrumentLabel.For(instrument.Code) is { } label
            ? Results.File(InstrumentLabelPdf.Write(label, instrument.Code, instrument.Name), "application/pdf")
            : Results.NotFound();
    }

    private static async Task<bool> MayReadAsync(HttpContext http, CurrentActor people) =>
        (await people.OfAsync(http.User, http.RequestAborted)).May(Right.Read);
}
