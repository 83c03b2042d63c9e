namespace LabVolatility.Web.People;

/// <summary>What a browser gets to keep a person's typing by.</summary>
/// <param name="Key">256 bits, in base 64: for the page's memory only.</param>
/// <param name="Envelope">The same key, closed: may lie beside what was enciphered with it.</param>
/// <param name="Now">The server's time in milliseconds since 1970, to compare times of typing with times of saving.</param>
public sealed record TypingKey(string Key, string Envelope, long Now);
