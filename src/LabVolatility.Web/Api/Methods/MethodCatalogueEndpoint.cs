using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Methods;

internal static class MethodCatalogueEndpoint
{
    public static void MapCatalogueOfMethods(this IEndpointRouteBuilder api) =>
        api.MapGet("/catalogue/methods", async (AnsweredPrecision read, CancellationToken cancel) =>
            {
                var precision = await read.Run(cancel);
                return TypedResults.Ok(new MethodsAnswer([.. TestMethods.All.Select(m => MethodAnswer.Of(m, precision))], KnownMethods.NotBuilt));
            })
            .Called("listMethods", "Test methods with their equations and the laboratory's precision").Needs(KeyScopes.Read);
}
