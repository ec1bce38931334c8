"""Servers that the tests of core/sync start, stop and kill, on loopback.

serve.py webdav PORT FOLDER [CERTIFICATE KEY]   asks for the name `potter` and the password `slip and sieve`
serve.py s3 PORT                                forgets everything when it ends; has the bucket `pots`
serve.py certificates FOLDER                    authority.pem, and server.pem with server.key that it vouches for

Says "ready" on a line of its own once it listens.
"""

import datetime
import ipaddress
import signal
import sys
import threading
from pathlib import Path

HOST = "127.0.0.1"


def webdav(port, folder, certificate=None, key=None):
    from cheroot import wsgi
    from cheroot.ssl.builtin import BuiltinSSLAdapter
    from wsgidav.wsgidav_app import WsgiDAVApp

    app = WsgiDAVApp({
        "provider_mapping": {"/": folder},
        "simple_dc": {"user_mapping": {"*": {"potter": {"password": "slip and sieve"}}}},
        "http_authenticator": {"accept_basic": True, "accept_digest": False, "default_to_digest": False},
        "verbose": 0,
        "logging": {"enable": False},
    })
    server = wsgi.Server((HOST, int(port)), app)
    if certificate:
        server.ssl_adapter = BuiltinSSLAdapter(certificate, key)
    server.prepare()
    print("ready", flush=True)
    server.serve()


def s3(port):
    import boto3
    from moto.server import ThreadedMotoServer

    server = ThreadedMotoServer(ip_address=HOST, port=int(port), verbose=False)
    server.start()
    client = boto3.client(
        "s3",
        endpoint_url=f"http://{HOST}:{port}",
        region_name="us-east-1",
        aws_access_key_id="potter",
        aws_secret_access_key="slip and sieve",
    )
    client.create_bucket(Bucket="pots")
    print("ready", flush=True)
    threading.Event().wait()


def certificates(folder):
    from cryptography import x509
    from cryptography.hazmat.primitives import hashes, serialization
    from cryptography.hazmat.primitives.asymmetric import ec
    from cryptography.x509.oid import NameOID

    folder = Path(folder)
    now = datetime.datetime.now(datetime.UTC)

    def name(text):
        return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text)])

    def signed(subject, key, issuer, by, *extensions):
        builder = (
            x509.CertificateBuilder()
            .subject_name(subject)
            .issuer_name(issuer)
            .public_key(key.public_key())
            .serial_number(x509.random_serial_number())
            .not_valid_before(now - datetime.timedelta(days=1))
            .not_valid_after(now + datetime.timedelta(days=7))
        )
        for extension, critical in extensions:
            builder = builder.add_extension(extension, critical)
        return builder.sign(by, hashes.SHA256()).public_bytes(serialization.Encoding.PEM)

    authority, server = ec.generate_private_key(ec.SECP256R1()), ec.generate_private_key(ec.SECP256R1())
    own = name("A studio's own authority")
    hosts = x509.SubjectAlternativeName([x509.DNSName("localhost"), x509.IPAddress(ipaddress.ip_address(HOST))])
    (folder / "authority.pem").write_bytes(
        signed(own, authority, own, authority, (x509.BasicConstraints(ca=True, path_length=0), True))
    )
    (folder / "server.pem").write_bytes(
        signed(name("storage box"), server, own, authority, (x509.BasicConstraints(ca=False, path_length=None), True), (hosts, False))
    )
    (folder / "server.key").write_bytes(
        server.private_bytes(
            serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
        )
    )
    print("ready", flush=True)


if __name__ == "__main__":
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    {"webdav": webdav, "s3": s3, "certificates": certificates}[sys.argv[1]](*sys.argv[2:])
