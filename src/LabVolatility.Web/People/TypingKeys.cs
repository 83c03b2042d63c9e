using System.Buffers.Binary;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace LabVolatility.Web.People;

/// <summary>Hands out the keys under which browsers keep unsaved typing. Nothing is stored here: the envelope holds all.</summary>
/// <remarks>An envelope opens for the person it was made for, for a day; for anybody else, or later, a new key is made.</remarks>
public sealed class TypingKeys(IDataProtectionProvider protection, TimeProvider clock)
{
    private const int KeyBytes = 32;
    private const int PersonBytes = 16;

    private static readonly TimeSpan Lasts = TimeSpan.FromDays(1);
    private readonly IDataProtector _protector = protection.CreateProtector("typing kept in a browser");

    /// <param name="person">Who is signed in.</param>
    /// <param name="envelope">What the browser has; null or empty where it has none.</param>
    public TypingKey Run(Guid person, string? envelope)
    {
        var now = clock.GetUtcNow();
        if (Open(person, envelope, now) is { } known)
            return new TypingKey(Convert.ToBase64String(known), envelope!, now.ToUnixTimeMilliseconds());
        var key = RandomNumberGenerator.GetBytes(KeyBytes);
        var content = new byte[PersonBytes + sizeof(long) + KeyBytes];
        person.TryWriteBytes(content);
        BinaryPrimitives.WriteInt64LittleEndian(content.AsSpan(PersonBytes), now.UtcTicks);
        key.CopyTo(content, PersonBytes + sizeof(long));
        return new TypingKey(Convert.ToBase64String(key), Convert.ToBase64String(_protector.Protect(content)), now.ToUnixTimeMilliseconds());
    }

    private byte[]? Open(Guid person, string? envelope, DateTimeOffset now)
    {
        var closed = new byte[envelope?.Length ?? 0];
        if (string.IsNullOrEmpty(envelope) || !Convert.TryFromBase64String(envelope, closed, out var length))
            return null;
        try
        {
            var content = _protector.Unprotect(closed[..length]);
            var made = new DateTimeOffset(BinaryPrimitives.ReadInt64LittleEndian(content.AsSpan(PersonBytes)), TimeSpan.Zero);
            return new Guid(content.AsSpan(0, PersonBytes)) == person && now - made < Lasts ? content[(PersonBytes + sizeof(long))..] : null;
        }
        catch (CryptographicException)
        {
            return null;
        }
    }
}
