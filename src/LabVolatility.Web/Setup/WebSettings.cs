using System.Net;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Setup;

/// <summary>What the environment says about this program; read once, before anything starts.</summary>
public sealed record WebSettings
{
    public const string DefaultAddress = "http://127.0.0.1:5080";

    public required bool Demo { get; init; }

    public required StorageOptions Storage { get; init; }

    /// <summary>Addresses to listen at.</summary>
    public required IReadOnlyList<string> Addresses { get; init; }

    /// <summary>Reverse proxies, besides loopback, whose forwarded headers count.</summary>
    public required IReadOnlyList<IPAddress> Proxies { get; init; }

    public DemoKey? DemoKey { get; init; }

    /// <summary>Cookies without Secure: only in demo mode, which listens at loopback or not at all.</summary>
    public bool CookiesWithoutTls => Demo && Listening.AllLoopback(Addresses);

    /// <exception cref="InvalidOperationException">A setting is wrong; the message says which and what would be right.</exception>
    public static WebSettings Read(IConfiguration configuration, IHostEnvironment environment)
    {
        var demo = Switch(configuration, "LABVOLATILITY_DEMO") ?? environment.IsDevelopment();
        return new WebSettings
        {
            Demo = demo,
            Storage = StorageOptions.From(name => configuration[name]),
            Addresses = Listening.Addresses(configuration),
            Proxies = [.. List(configuration["LABVOLATILITY_PROXIES"]).Select(Proxy)],
            DemoKey = demo ? Key(configuration["LABVOLATILITY_DEMO_KEY"]) : null,
        };
    }

    private static bool? Switch(IConfiguration configuration, string name) => configuration[name]?.Trim().ToUpperInvariant() switch
    {
        null or "" => null,
        "TRUE" or "1" => true,
        "FALSE" or "0" => false,
        _ => throw new InvalidOperationException($"{name} is true or false, not \"{configuration[name]}\"."),
    };

    private static string[] List(string? text) =>
        (text ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static IPAddress Proxy(string text) => IPAddress.TryParse(text, out var address)
        ? address
        : throw new InvalidOperationException($"LABVOLATILITY_PROXIES lists IP addresses; \"{text}\" is none.");

    private static DemoKey? Key(string? secret)
    {
        try
        {
            return DemoKey.From(secret);
        }
        catch (ArgumentException wrong)
        {
            throw new InvalidOperationException(wrong.Message, wrong);
        }
    }
}
