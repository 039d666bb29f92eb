"""Transmission loss of a slit lined on both walls between two unlined slits, by mode matching in two dimensions.

Makes the values in StraightBeamTest. Needs numpy and scipy. The liner is Miki's, bulk reacting, with rigid back and rigid
ends; modes across it are found with quadratic finite elements, so that none is missed. Printed: clear width, liner
depth, frequency, length; decay of the least attenuated symmetric mode in dB/m; loss in dB for a plane wave along the axis;
loss in dB for equal power in all modes that can run in the unlined slit.
"""
import numpy as np
import scipy.linalg as la

C = 343.2
SIGMA = 20000.0


def miki(f):
    x = 1000 * f / SIGMA
    return 1 + 5.50 * x**-0.632 - 8.43j * x**-0.632, 1 + 7.81 * x**-0.618 - 11.41j * x**-0.618


def decaying(squared):
    k = np.sqrt(squared.astype(complex))
    return np.where(k.imag > 0, -k, k)


def modes(f, w, d):
    """Axial wavenumbers and shapes across liner, air, liner; mass matrices with inverse density, and of the air alone."""
    k0 = 2 * np.pi * f / C
    z, g = miki(f)
    h = min(w / 40, 0.002 if f < 4500 else 0.001)
    cells = []
    for length, lined in ((d, True), (w, False), (d, True)):
        n = max(4, int(np.ceil(length / h)))
        cells += [(lined, length / n)] * n
    size = 2 * len(cells) + 1
    stiff = np.zeros((size, size), complex)
    mass = np.zeros((size, size), complex)
    air = np.zeros((size, size))
    y = np.zeros(size)
    m = np.array([[4, 2, -1], [2, 16, 2], [-1, 2, 4]]) / 30
    s = np.array([[7, -8, 1], [-8, 16, -8], [1, -8, 7]]) / 3
    at = -d
    for e, (lined, le) in enumerate(cells):
        i = np.ix_([2 * e, 2 * e + 1, 2 * e + 2], [2 * e, 2 * e + 1, 2 * e + 2])
        y[2 * e : 2 * e + 3] = at, at + le / 2, at + le
        at += le
        inverse_density = 1 / (z * g) if lined else 1
        compressibility = g / z if lined else 1
        stiff[i] += k0**2 * compressibility * m * le - inverse_density * s / le
        mass[i] += inverse_density * m * le
        if not lined:
            air[i] += m * le
    squared, shapes = la.eig(stiff, mass)
    k = decaying(squared)
    order = np.argsort(abs(k.imag))
    return k[order], shapes[:, order], mass, air, y


def loss(f, w, d, length, count=40):
    k0 = 2 * np.pi * f / C
    k, v, mass, air, y = modes(f, w, d)
    k, v = k[:count], v[:, :count]
    ducts = np.arange(max(8, int(count * w / (w + 2 * d))))
    p = np.cos(np.outer(np.clip(y, 0, w), ducts * np.pi / w))
    p[(y < -1e-12) | (y > w + 1e-12)] = 0
    norm = np.where(ducts == 0, w, w / 2)
    kd = decaying(k0**2 - (ducts * np.pi / w) ** 2)
    couple = p.T @ air @ v
    own = np.einsum("im,ij,jm->m", v, mass, v) * k
    e = np.exp(-1j * k * length)
    nd, nm = len(ducts), count
    system = np.block([
        [-np.diag(norm), couple, couple * e, np.zeros((nd, nd))],
        [couple.T * kd, np.diag(own), -np.diag(own * e), np.zeros((nm, nd))],
        [np.zeros((nd, nd)), couple * e, couple, -np.diag(norm)],
        [np.zeros((nm, nd)), np.diag(own * e), -np.diag(own), -couple.T * kd],
    ])
    through = []
    running = [i for i in range(nd) if kd[i].real > 1e-6]
    for i in running:
        inc = np.zeros(nd, complex)
        inc[i] = 1
        right = np.concatenate([norm * inc, couple.T @ (kd * inc), np.zeros(nd + nm)])
        out = np.linalg.solve(system, right)[nd + 2 * nm :]
        through.append(np.sum(norm * kd.real * abs(out) ** 2) / (norm[i] * kd[i].real))
    return -20 / np.log(10) * k[0].imag, -10 * np.log10(through[0]), -10 * np.log10(np.mean(through))


if __name__ == "__main__":
    for w, d in ((0.10, 0.025), (0.15, 0.025), (0.25, 0.025), (0.25, 0.05), (0.40, 0.05)):
        for octave in (1, 2, 3):
            f = 1000 * 10 ** (0.3 * octave)
            if f * w < 2 * C:
                continue
            for length in (0.6, 1.5, 3.0):
                print("%.2f, %.3f, %.2f, %.1f, %.3f, %.2f, %.2f" % ((w, d, f, length) + loss(f, w, d, length)), flush=True)
