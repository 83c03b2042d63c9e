using System.Text;
using System.Text.Json;

namespace LabVolatility.Web.Api;

/// <summary>Reads a request's JSON: its type, its size, its depth, its form; then its shape.</summary>
internal static class BodyReader
{
    public const int MostBytes = 1_000_000;
    public const int Deepest = 16;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    private static readonly JsonDocumentOptions Options = new() { MaxDepth = Deepest };

    /// <summary>The body and what is wrong in it, or the refusal where it can't be read at all.</summary>
    public static async Task<(Given Body, Mistakes Mistakes, IResult? Refusal)> ReadAsync(HttpContext http, Func<Given, Shape> shapeFor)
    {
        var mistakes = new Mistakes();
        var nothing = new Given(null, "", mistakes);
        if (!IsJson(http.Request))
            return (nothing, mistakes, ProblemAnswer.Of(StatusCodes.Status415UnsupportedMediaType, "Send application/json in UTF-8."));
        if (await BytesAsync(http) is not { } bytes)
            return (nothing, mistakes, ProblemAnswer.Of(StatusCodes.Status413PayloadTooLarge, $"A request is at most {MostBytes} bytes long."));
        if (Parse(bytes, mistakes) is not { } sent)
            return (nothing, mistakes, ProblemAnswer.Of(mistakes));
        var body = new Given(sent, "", mistakes);
        shapeFor(body).Check(sent, "", mistakes);
        return (body, mistakes, null);
    }

    private static bool IsJson(HttpRequest request)
    {
        if (!request.HasJsonContentType())
            return false;
        var charset = request.GetTypedHeaders().ContentType?.Charset.Value;
        return string.IsNullOrEmpty(charset) || charset.Trim('"').Equals("utf-8", StringComparison.OrdinalIgnoreCase);
    }

    private static async Task<byte[]?> BytesAsync(HttpContext http)
    {
        if (http.Request.ContentLength > MostBytes)
            return null;
        using var kept = new MemoryStream();
        var part = new byte[16_384];
        int read;
        while ((read = await http.Request.Body.ReadAsync(part, http.RequestAborted)) > 0)
        {
            kept.Write(part, 0, read);
            if (kept.Length > MostBytes)
                return null;
        }

        return kept.ToArray();
    }

    private static Sent? Parse(byte[] bytes, Mistakes mistakes)
    {
        try
        {
            using var document = JsonDocument.Parse(Strict.GetString(bytes), Options);
            return Sent.From(document.RootElement);
        }
        catch (DecoderFallbackException)
        {
            mistakes.Add("", "The body isn't UTF-8.");
        }
        catch (JsonException wrong)
        {
            mistakes.Add("", $"The body isn't JSON of at most {Deepest} levels: line {wrong.LineNumber + 1}, byte {wrong.BytePositionInLine + 1}.");
        }
        catch (InvalidOperationException)
        {
            mistakes.Add("", "A text in the body isn't Unicode: half of a surrogate pair.");
        }

        return null;
    }
}
