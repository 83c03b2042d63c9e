using System.Text.Encodings.Web;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Layout;

/// <summary>What to do in an emergency: answered before sign-in, database and circuit, so that it works when they don't.</summary>
public static class EmergencyPage
{
    private const string NumbersHere = "<!--numbers-->";
    private const string NotEntered = "<p><b>Not entered yet.</b> The administrator enters the site's numbers in Setup. Use the numbers posted in the laboratory.</p>";

    public static void UseEmergencyPage(this WebApplication app)
    {
        var file = app.Environment.WebRootFileProvider.GetFileInfo("emergency.html");
        using var reader = new StreamReader(file.CreateReadStream());
        var text = reader.ReadToEnd();
        app.Use((http, next) => http.Request.Path == "/emergency" && HttpMethods.IsGet(http.Request.Method)
            ? AnswerAsync(http, text)
            : next(http));
    }

    private static Task AnswerAsync(HttpContext http, string text)
    {
        var numbers = http.RequestServices.GetRequiredService<LaboratoryFacts>().EmergencyNumbers();
        var shown = numbers is null
            ? NotEntered
            : $"<ul>{string.Concat(numbers.Split('\n').Select(line => $"<li>{HtmlEncoder.Default.Encode(line)}</li>"))}</ul>";
        http.Response.ContentType = "text/html; charset=utf-8";
        return http.Response.WriteAsync(text.Replace(NumbersHere, shown, StringComparison.Ordinal), http.RequestAborted);
    }
}
