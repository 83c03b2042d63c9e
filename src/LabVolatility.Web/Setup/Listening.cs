using System.Net;
using Microsoft.AspNetCore.Http;

namespace LabVolatility.Web.Setup;

/// <summary>Where the program listens, and whether it may.</summary>
public static class Listening
{
    /// <summary>Every address that the server would bind.</summary>
    public static IReadOnlyList<string> Addresses(IConfiguration configuration)
    {
        var named = configuration[WebHostDefaults.ServerUrlsKey];
        var urls = string.IsNullOrWhiteSpace(named) ? WebSettings.DefaultAddress : named;
        var endpoints = configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(e => e["Url"]).OfType<string>();
        return [.. urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries), .. endpoints];
    }

    public static bool AllLoopback(IReadOnlyList<string> addresses) => addresses.All(IsLoopback);

    /// <summary>Why the program may not start with these settings, or null.</summary>
    public static string? Refusal(WebSettings settings) =>
        settings.Demo && settings.Addresses.FirstOrDefault(a => !IsLoopback(a)) is { } open
            ? $"Demo mode listens at loopback only, because its passwords are on the sign-in page: {open} is refused. Take an address such as {WebSettings.DefaultAddress}, or set LABVOLATILITY_DEMO=false."
            : null;

    private static bool IsLoopback(string address)
    {
        BindingAddress parsed;
        try
        {
            parsed = BindingAddress.Parse(address);
        }
        catch (FormatException)
        {
            return false;
        }

        return !parsed.IsUnixPipe
            && (string.Equals(parsed.Host, "localhost", StringComparison.OrdinalIgnoreCase)
                || (IPAddress.TryParse(parsed.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip)));
    }
}
