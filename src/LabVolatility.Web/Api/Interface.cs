using LabVolatility.Laboratory.Certificates;
using LabVolatility.Web.Api.Assessment;
using LabVolatility.Web.Api.Batches;
using LabVolatility.Web.Api.Bench;
using LabVolatility.Web.Api.Certificates;
using LabVolatility.Web.Api.Limits;
using LabVolatility.Web.Api.Methods;
using LabVolatility.Web.Api.Precision;
using LabVolatility.Web.Api.Records;
using LabVolatility.Web.Api.Samples;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace LabVolatility.Web.Api;

/// <summary>The machine interface: other people's programs calculate, read and write through it.</summary>
public static class Interface
{
    public const string BasePath = "/api/v1";

    public static void AddInterface(this IServiceCollection services)
    {
        services.AddAuthentication().AddScheme<AuthenticationSchemeOptions, KeyAuthentication>(KeyAuthentication.SchemeName, null);
        services.Configure<RateLimiterOptions>(InterfaceLimits.Add);
        services.ConfigureHttpJsonOptions(options => options.SerializerOptions.NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.Strict);
        services.TryAddTransient<ReadCertificates>();
        services.AddTransient<AnsweredPrecision>();
        services.AddTransient<AnsweredCorrelation>();
        services.AddTransient<CatalogueSource>();
        services.AddOpenApi(InterfaceDocument.Name, InterfaceDocument.Configure);
    }

    /// <param name="app">The application.</param>
    /// <param name="openDocument">Whether the OpenAPI document is read without a key: in demo mode and Development only.</param>
    public static void MapInterface(this IEndpointRouteBuilder app, bool openDocument)
    {
        var api = app.MapGroup(BasePath).WithGroupName(InterfaceDocument.Name);
        var calculations = api.MapGroup("").WithTags("Calculations");
        calculations.MapResults();
        calculations.MapGasCorrection();
        calculations.MapPrecision();
        calculations.MapConformity();
        var catalogue = api.MapGroup("").WithTags("Catalogue");
        catalogue.MapCatalogueOfMethods();
        catalogue.MapCatalogueOfLimits();
        var work = api.MapGroup("").WithTags("Work");
        work.MapSamples();
        work.MapDeterminations();
        work.MapResultList();
        work.MapBatches();
        work.MapCertificates();
        work.MapRecords();
        app.Map("/api/{**rest}", NothingHere.Answer).AllowAnonymous().ExcludeFromDescription();
        InterfaceDocument.Map(app, openDocument);
    }
}
