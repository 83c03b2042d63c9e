using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace LabVolatility.Laboratory.Records;

/// <summary>How an audit record is hashed into the chain.</summary>
/// <remarks>
/// Hash = SHA-256 over UTF-8 of the format's name, a line feed and canonical JSON of all members but the hash itself,
/// in lower-case hexadecimal. The first record's previous hash is 64 zeros. A change of this text is a new format.
/// </remarks>
internal static class Chain
{
    public const string Format = "labvolatility-record-1";

    public static string Genesis { get; } = new('0', 64);

    public static string HashOf(AuditRecord record) => HashOf(Content(record));

    public static string HashOf(string content) => Sha256(Format + "\n" + content);

    public static string Sha256(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <summary>What is hashed, after the format's name.</summary>
    public static string Content(AuditRecord record)
    {
        var text = new StringBuilder("{");
        Add("action", record.Action);
        Add("actor", record.Actor);
        Add("actorId", record.ActorId?.ToString("D"));
        Add("after", record.After);
        CanonicalText.AppendMember(text, "at", CanonicalText.OfInstant(record.At));
        Add("before", record.Before);
        Add("build", record.Build);
        Add("origin", record.Origin);
        Add("previousHash", record.PreviousHash);
        Add("reason", record.Reason);
        CanonicalText.AppendMember(text, "sequence", record.Sequence.ToString(CultureInfo.InvariantCulture));
        Add("subject", record.Subject);
        Add("subjectId", record.SubjectId);
        return text.Append('}').ToString();

        void Add(string name, string? value) =>
            CanonicalText.AppendMember(text, name, value is null ? CanonicalText.Null : CanonicalText.OfText(value));
    }
}
