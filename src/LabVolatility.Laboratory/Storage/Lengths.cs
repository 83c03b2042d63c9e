namespace LabVolatility.Laboratory.Storage;

/// <summary>Longest texts, in characters; the context refuses longer ones on both engines alike.</summary>
public static class Lengths
{
    public const int Code = 40;
    public const int Name = 200;
    public const int Unit = 16;
    public const int Hash = 64;
    public const int Note = 4000;
}
