using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace LabVolatility.Laboratory.Records;

/// <summary>What each thing's last audit record says it is, held as hashes: 32 bytes a thing, however long its text.</summary>
internal sealed class LastTexts
{
    private static readonly UInt128 Deleted = UInt128.Zero;

    private readonly Dictionary<UInt128, UInt128> _texts = [];

    public void Set(string subject, string id, string? after) => _texts[Key(subject, id)] = after is null ? Deleted : Hash(after);

    /// <summary>Takes a thing out: null where no record speaks of it, or the last one says that it is gone; else whether its text is the one recorded.</summary>
    public bool? Take(string subject, string id, string text) =>
        _texts.Remove(Key(subject, id), out var recorded) && recorded != Deleted ? recorded == Hash(text) : null;

    /// <summary>True while a thing that should be there has not been taken out.</summary>
    public bool Awaits(string subject, string id) => _texts.TryGetValue(Key(subject, id), out var recorded) && recorded != Deleted;

    public bool AwaitsAny() => _texts.Values.Any(t => t != Deleted);

    private static UInt128 Key(string subject, string id) => Hash($"{subject}\n{id}");

    private static UInt128 Hash(string text) =>
        BinaryPrimitives.ReadUInt128BigEndian(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
