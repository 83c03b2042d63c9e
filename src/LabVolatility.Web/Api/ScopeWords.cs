using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api;

internal static class ScopeWords
{
    public static string Text(KeyScopes scope) => scope.ToString().ToLowerInvariant();
}
