namespace LabVolatility.Laboratory.Certificates.Documents;

/// <summary>What stands at the top of a certificate's first page.</summary>
/// <param name="Title">What the document is.</param>
/// <param name="Issuer">The laboratory and its place.</param>
/// <param name="Number">Drawn as a bar code, too.</param>
/// <param name="CheckCode">By which a recipient can check it.</param>
/// <param name="CheckAddress">Where; drawn as a square code, too.</param>
internal sealed record DocumentHead(string Title, string Issuer, string Number, string CheckCode, string CheckAddress)
{
    public static string IssuerOf(string laboratory, string? place) => place is { Length: > 0 } ? $"{laboratory}, {place}" : laboratory;
}
