namespace LabVolatility.Laboratory.People;

/// <summary>Pieces that guessed passwords are built from: words of the lists tried first, rows of keys, words of this trade.</summary>
internal static class CommonPasswordWords
{
    private const string Words = """
        password passwort passord passwd pass1234 secret geheim admin administrator root user guest login welcome letmein
        changeme change default master dragon monkey shadow sunshine princess football baseball basketball superman batman
        trustno1 iloveyou love hello whatever freedom michael jessica ashley daniel thomas charlie jordan hunter ranger
        buster killer soccer hockey tigger pepper ginger cookie summer winter spring autumn january february march april
        june july august september october november december monday tuesday wednesday thursday friday saturday sunday
        company test testing tester demo temp temporary access starwars computer internet server system windows samsung
        abc123 abcdef abcd qwertyuiop qwerty qwertz azerty asdfghjkl asdfgh asdf zxcvbnm zxcvbn yxcvbnm 1q2w3e4r 1qaz2wsx
        qazwsx q1w2e3 1234567890 0987654321 123456789 12345678 1234567 123456 12345 1234 654321 111111 000000 121212
        112233 123123 666666 777777 888888 987654 2020 2021 2022 2023 2024 2025 2026 2027 2028
        labvolatility laboratory volatility refinery gasoline petrol butane reformate naphtha crude vapour vapor pressure
        dvpe rvp astm d5191 d323 d6378 en13016 en228 kpa psi certificate sample batch analyst chemist bench tester
        """;

    public static IReadOnlyList<string> All { get; } = Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
