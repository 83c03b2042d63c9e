namespace LabVolatility.Laboratory.Tests.Demo;

/// <summary>Hears of progress at once, on the maker's own thread.</summary>
internal sealed class Listener(Action<(int Done, int Of)> tell) : IProgress<(int Done, int Of)>
{
    public void Report((int Done, int Of) value) => tell(value);
}
