"""Writes draw-vectors.csv: the generator of soapstone.variant.Draw, told a second time.

SplitMix64's finalizer (Steele, Lea, Flood 2014) over seed, FNV-1a hash of the name, and try; then the high half of the
product with the size.
"""

ALL = (1 << 64) - 1
GOLDEN = 0x9E3779B97F4A7C15


def mix(x):
    x = ((x ^ (x >> 30)) * 0xBF58476D1CE4E5B9) & ALL
    x = ((x ^ (x >> 27)) * 0x94D049BB133111EB) & ALL
    return x ^ (x >> 31)


def fnv(name):
    h = 0xCBF29CE484222325
    for byte in name.encode("utf-8"):
        h = ((h ^ byte) * 0x100000001B3) & ALL
    return h


def bits(seed, name, attempt):
    return mix((mix(mix((seed + GOLDEN) & ALL) ^ fnv(name)) + GOLDEN * (attempt + 1)) & ALL)


def index(seed, name, attempt, size):
    return ((bits(seed, name, attempt) >> 1) * (size << 1)) >> 64


def signed(x):
    return x - (1 << 64) if x >> 63 else x


SEEDS = [0, 1, 2, 7, 42, 1000, 123456789, -1, (1 << 63) - 1, -(1 << 63)]
NAMES = ["length", "holes", "edge", "a", "", "\u00e4ngle"]
SIZES = [1, 2, 3, 10, 14, 181, 1000, 1000000]

print("# These values must never change: a link or a record names a seed, and the same numbers have to come back in every")
print("# later version. Written by draw-vectors.py, a second implementation.")
print("seed,name,try,size,bits,index")
for n, seed in enumerate(SEEDS):
    for m, name in enumerate(NAMES):
        for attempt in (0, 1, 599):
            size = SIZES[(n + m + attempt) % len(SIZES)]
            print(f"{seed},{name},{attempt},{size},{signed(bits(seed & ALL, name, attempt))},{index(seed & ALL, name, attempt, size)}")
