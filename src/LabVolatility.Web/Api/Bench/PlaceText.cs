using System.Buffers.Binary;
using System.Buffers.Text;
using LabVolatility.Laboratory.Bench;

namespace LabVolatility.Web.Api.Bench;

/// <summary>Where a page of results ended, as text that means nothing to others.</summary>
internal static class PlaceText
{
    private const int Bytes = 24;

    public static string Of(ReadResults.Place place)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        BinaryPrimitives.WriteInt64BigEndian(bytes, place.RecordedAt.UtcTicks);
        place.Determination.TryWriteBytes(bytes[8..]);
        return Base64Url.EncodeToString(bytes);
    }

    public static bool TryRead(string text, out ReadResults.Place? place)
    {
        place = null;
        if (!Base64Url.IsValid(text) || Base64Url.DecodeFromChars(text) is not { Length: Bytes } bytes)
            return false;
        var ticks = BinaryPrimitives.ReadInt64BigEndian(bytes);
        if (ticks < DateTimeOffset.UnixEpoch.UtcTicks || ticks > DateTimeOffset.MaxValue.UtcTicks)
            return false;
        place = new ReadResults.Place(new DateTimeOffset(ticks, TimeSpan.Zero), new Guid(bytes.AsSpan(8)));
        return true;
    }
}
