namespace LabVolatility.Laboratory.Setup;

/// <summary>The key from the environment that opens the demo's interface, kept as its hash.</summary>
public sealed class DemoKey
{
    public const int Shortest = 16;
    public const string OwnerUserName = "demo.service";

    private DemoKey(string hash) => Hash = hash;

    internal string Hash { get; }

    /// <summary>Null for an empty key; a short one is a mistake of whoever set it.</summary>
    /// <exception cref="ArgumentException">It is shorter than 16 characters.</exception>
    public static DemoKey? From(string? secret)
    {
        if (string.IsNullOrEmpty(secret))
            return null;
        if (secret.Length < Shortest)
            throw new ArgumentException($"LABVOLATILITY_DEMO_KEY has fewer than {Shortest} characters.", nameof(secret));
        return new DemoKey(KeySecret.Hash(secret));
    }
}
