using LabVolatility.Web.Records;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;

namespace LabVolatility.Web.Layout;

/// <summary>What people and programs are told when something went wrong: words and a reference, never an inside.</summary>
public static class ErrorAnswers
{
    public static void UseErrorAnswers(this IApplicationBuilder app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = FaultAsync });
        app.UseStatusCodePages(context => StatusAsync(context.HttpContext));
    }

    /// <summary>True for addresses that programs call: they get problem+json.</summary>
    public static bool IsForProgram(HttpContext http) =>
        http.Request.Path.StartsWithSegments("/api") || http.Request.Path.StartsWithSegments("/openapi") || http.Request.Path.StartsWithSegments("/session");

    public static Task WriteProblemAsync(HttpContext http, int status, string detail)
    {
        var problem = new ProblemDetails { Status = status, Title = Words(status).Title, Detail = detail };
        problem.Extensions["reference"] = Reference.Of(http);
        http.Response.StatusCode = status;
        return http.Response.WriteAsJsonAsync(problem, options: null, contentType: "application/problem+json", http.RequestAborted);
    }

    private static Task FaultAsync(HttpContext http)
    {
        var status = http.Features.Get<IExceptionHandlerFeature>()?.Error is BadHttpRequestException bad
            ? bad.StatusCode
            : StatusCodes.Status500InternalServerError;
        return AnswerAsync(http, status);
    }

    private static Task StatusAsync(HttpContext http) => AnswerAsync(http, http.Response.StatusCode);

    private static Task AnswerAsync(HttpContext http, int status)
    {
        var (title, what) = Words(status);
        return IsForProgram(http)
            ? WriteProblemAsync(http, status, what)
            : PlainPage.WriteAsync(http, status, title, what, $"Reference {Reference.Of(http)}: the administrator finds it in the log.");
    }

    private static (string Title, string What) Words(int status) => status switch
    {
        400 => ("This could not be understood", "What was sent is incomplete or too old. Go back, open the page again and repeat it."),
        401 => ("Sign-in is needed", "No valid sign-in or key was sent."),
        403 => ("Not for your role", "Your account may not open this. The administrator can tell who may."),
        404 => ("There is nothing at this address", "The address is mistyped, or what it named does not exist."),
        405 => ("This address does not take that", "Open it from its page."),
        409 => ("Somebody was first", "What you saw has changed meanwhile. Open it again."),
        413 => ("Too much at once", "What was sent is larger than this address takes."),
        429 => ("Too many tries", "Wait a minute, then try again."),
        503 => ("Not ready", "The laboratory can't be used at the moment."),
        _ => ("Something failed here", "Nothing that was saved before is lost. Try again; if it happens once more, give the administrator the reference."),
    };
}
