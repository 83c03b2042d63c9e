using LabVolatility.Laboratory.Records;
using LabVolatility.Web.Records;
using Microsoft.AspNetCore.Mvc;

namespace LabVolatility.Web.Api;

/// <summary>What a program is told when it can't have what it asked for: problem+json (RFC 9457) with a reference.</summary>
internal sealed class ProblemAnswer(int status, string detail, IReadOnlyDictionary<string, string[]>? errors = null) : IResult
{
    public const string ContentType = "application/problem+json";

    private object? _inForce;

    public static ProblemAnswer Of(int status, string detail) => new(status, detail);

    public static ProblemAnswer Of(Mistakes mistakes) => new(
        StatusCodes.Status400BadRequest, "The request breaks rules; each stands in errors at its JSON pointer.", mistakes.ByPointer);

    /// <summary>A use case's refusal in the status that programs expect.</summary>
    public static ProblemAnswer Of<T>(Answer<T> answer, object? inForce = null)
    {
        var errors = answer.Problems.GroupBy(p => p.Field).ToDictionary(g => g.Key, g => g.Select(p => p.Message).Distinct().ToArray());
        return answer.Kind switch
        {
            AnswerKind.Invalid => new(StatusCodes.Status400BadRequest, "The request breaks rules; each stands in errors at its JSON pointer.", errors),
            AnswerKind.Forbidden => new(StatusCodes.Status403Forbidden, $"{answer.Text} The key's owner isn't one."),
            AnswerKind.NotFound => new(StatusCodes.Status404NotFound, answer.Text),
            AnswerKind.Refused => new(StatusCodes.Status400BadRequest, "A rule of the laboratory refuses it, as it would at the bench.", errors),
            AnswerKind.Conflict => new(StatusCodes.Status409Conflict, answer.Text) { _inForce = inForce },
            _ => throw new ArgumentOutOfRangeException(nameof(answer), answer.Kind, "That is no refusal."),
        };
    }

    public Task ExecuteAsync(HttpContext httpContext) => WriteAsync(httpContext, status, detail, errors, _inForce);

    public static Task WriteAsync(
        HttpContext http, int status, string detail, IReadOnlyDictionary<string, string[]>? errors = null, object? inForce = null)
    {
        var problem = new ProblemDetails { Status = status, Title = Title(status), Detail = detail };
        problem.Extensions["reference"] = Reference.Of(http);
        if (errors is not null)
            problem.Extensions["errors"] = errors;
        if (inForce is not null)
            problem.Extensions["inForce"] = inForce;
        http.Response.StatusCode = status;
        return http.Response.WriteAsJsonAsync(problem, options: null, contentType: ContentType, http.RequestAborted);
    }

    private static string Title(int status) => status switch
    {
        400 => "The request breaks rules",
        401 => "A key is needed",
        403 => "The key does not open this",
        404 => "There is no such thing",
        405 => "This address does not take that",
        409 => "It conflicts with what is in force",
        413 => "Too much at once",
        415 => "Another content type is needed",
        422 => "It can't be computed",
        429 => "Too many requests",
        _ => "It failed",
    };
}
