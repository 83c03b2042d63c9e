using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using LabVolatility.Web.Records;

namespace LabVolatility.Web.Setup;

/// <summary>The way of a request through the program, outermost first.</summary>
public static class Pipeline
{
    public static void UsePipeline(this WebApplication app, WebSettings settings)
    {
        app.UseResponseHeaders();
        if (!settings.Demo)
            app.UseForwardedHeaders();
        app.UseLabLog();
        app.UseErrorAnswers();
        app.UseEmergencyPage();
        if (!settings.Demo)
        {
            app.UseHsts();
            app.UseTlsOnly();
        }

        app.UseSocketOrigin();
        app.UseRouting();
        app.UseNotReadyYet();
        app.UseRateLimiter();
        app.UseAuthentication();
        app.UseOneTimePasswordGate();
        app.UseAuthorization();
        app.UseAntiforgery();
    }
}
