using System.Globalization;
using Serilog;
using Serilog.Context;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace LabVolatility.Web.Records;

/// <summary>The program's log: standard error for people, files of JSON lines under the data folder.</summary>
public static class LabLog
{
    private const int DaysKept = 31;
    private const string Line = "{Timestamp:yyyy-MM-dd HH:mm:ss.fff zzz} {Level:u3} {Message:lj} {Reference}{NewLine}{Exception}";

    public static void AddLabLog(this IHostBuilder host, string dataFolder) => host.UseSerilog((_, _, log) => log
        .MinimumLevel.Information()
        .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
        .MinimumLevel.Override("Microsoft.Hosting.Lifetime", LogEventLevel.Information)
        .Enrich.FromLogContext()
        .WriteTo.Console(outputTemplate: Line, formatProvider: CultureInfo.InvariantCulture, standardErrorFromLevel: LogEventLevel.Verbose)
        .WriteTo.File(new CompactJsonFormatter(), Path.Combine(dataFolder, "logs", "lab-.jsonl"),
            rollingInterval: RollingInterval.Day, retainedFileCountLimit: DaysKept, shared: false));

    /// <summary>Gives each request its reference; the path is logged, never the query.</summary>
    public static void UseLabLog(this IApplicationBuilder app)
    {
        app.Use(async (http, next) =>
        {
            using (LogContext.PushProperty(Reference.Property, Reference.Of(http)))
                await next(http);
        });
        app.UseSerilogRequestLogging(options =>
        {
            options.MessageTemplate = "{RequestMethod} {RequestPath} answered {StatusCode} in {Elapsed:0} ms";
            options.GetLevel = Level;
            options.EnrichDiagnosticContext = (context, http) => context.Set(Reference.Property, Reference.Of(http));
        });
    }

    private static LogEventLevel Level(HttpContext http, double elapsed, Exception? fault) => (fault, http.Response.StatusCode) switch
    {
        (not null, _) or (_, >= 500 and not 503) => LogEventLevel.Error,
        _ when http.Request.Path.StartsWithSegments("/health") || http.Request.Path.StartsWithSegments("/_blazor") || http.Request.Path.StartsWithSegments("/session") => LogEventLevel.Debug,
        _ when http.GetEndpoint()?.Metadata.GetMetadata<Microsoft.AspNetCore.StaticAssets.StaticAssetDescriptor>() is not null => LogEventLevel.Debug,
        _ => LogEventLevel.Information,
    };
}
