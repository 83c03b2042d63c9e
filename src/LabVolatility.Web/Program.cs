using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.Api;
using LabVolatility.Web.Commands;
using LabVolatility.Web.Certificates;
using LabVolatility.Web.Layout;
using LabVolatility.Web.People;
using LabVolatility.Web.Records;
using LabVolatility.Web.Samples;
using LabVolatility.Web.Setup;

if (await CommandLine.TryRunAsync(args) is { } exitCode)
    return exitCode;

// Published, its files lie beside it, wherever it was started from.
var home = Directory.Exists(Path.Combine(AppContext.BaseDirectory, "wwwroot")) ? AppContext.BaseDirectory : null;
var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = home });
var settings = WebSettings.Read(builder.Configuration, builder.Environment);
if (Listening.Refusal(settings) is { } refusal)
{
    await Console.Error.WriteLineAsync(refusal);
    return 1;
}

builder.Host.AddLabLog(settings.Storage.DataFolder);
builder.AddServerLimits(settings);
builder.Services.AddSingleton(settings);
builder.Services.AddLabStorage(settings.Storage);
builder.Services.AddUseCases(settings.DemoKey);
builder.Services.AddRateLimits();
builder.Services.AddSignIn(settings);
builder.Services.AddShell();
builder.Services.AddInterface();
builder.Services.AddCertificates();
builder.Services.AddStartUp(settings);

var app = builder.Build();
app.UsePipeline(settings);
app.MapHealth();
app.MapSessions();
app.MapInterface(openDocument: settings.Demo || app.Environment.IsDevelopment());
app.MapShell();
app.MapLabels();
app.MapCertificates();

using var statements = StatementCount.Listen();
await app.RunAsync();
return Environment.ExitCode;
