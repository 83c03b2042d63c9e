using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Layout;

/// <summary>A page that needs nothing else to work: no sign-in, no database, no circuit.</summary>
public static class PlainPage
{
    public static Task WriteAsync(HttpContext http, int status, string title, params string[] paragraphs) =>
        WriteAsync(http, status, title, paragraphs, null, null);

    public static async Task WriteAsync(HttpContext http, int status, string title, string[] paragraphs, int? refreshSeconds, StartupProgress? progress)
    {
        http.Response.StatusCode = status;
        http.Response.ContentType = "text/html; charset=utf-8";
        await http.Response.WriteAsync(Html(title, paragraphs, refreshSeconds, progress), http.RequestAborted);
    }

    private static string Html(string title, string[] paragraphs, int? refreshSeconds, StartupProgress? progress)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        if (refreshSeconds is { } seconds)
            html.Append(CultureInfo.InvariantCulture, $"<meta http-equiv=\"refresh\" content=\"{seconds}\">");
        html.Append(CultureInfo.InvariantCulture, $"<title>{Text(title)}</title><link rel=\"icon\" type=\"image/svg+xml\" href=\"/mark.svg\"><link rel=\"stylesheet\" href=\"/lab.css\"></head><body><main class=\"narrow\"><h1>{Text(title)}</h1>");
        foreach (var paragraph in paragraphs)
            html.Append(CultureInfo.InvariantCulture, $"<p>{Text(paragraph)}</p>");
        if (progress is { Total: > 0 } p)
            html.Append(CultureInfo.InvariantCulture, $"<progress max=\"{p.Total}\" value=\"{p.Done}\" aria-label=\"Progress\">{p.Done} of {p.Total}</progress>");
        html.Append("<p><a href=\"/\">Open the laboratory</a> · <a href=\"/emergency\">Emergency</a></p></main></body></html>");
        return html.ToString();
    }

    private static string Text(string text) => HtmlEncoder.Default.Encode(text);
}
